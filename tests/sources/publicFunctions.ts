import path from "node:path";
import ts from "typescript";

/** One function of core's public face. */
export interface PublicFunction {
  readonly name: string;
  /** From the root of the project. */
  readonly file: string;
  /** The first sentence of its docstring. */
  readonly sentence: string;
}

const firstSentence = (text: string): string => /^[\s\S]*?[.?!](?=\s|$)/.exec(text.trim())?.[0].replace(/\s+/g, " ") ?? text.trim();

/** They only name the unit of a number. */
const unitNames = ["core/quantity/units.ts", "core/rules/ruleUnits.ts", "core/kinds.ts"];

/**
 * The functions that `core/index.ts` gives to the outside, in the order of their files and names.
 *
 * @param root - the project's folder
 * @param exported - the names the face has at run time: a type of the same symbol is not enough
 */
export function publicFunctions(root: string, exported: ReadonlySet<string>): readonly PublicFunction[] {
  const face = path.join(root, "core/index.ts");
  const { options } = ts.parseJsonConfigFileContent(ts.readConfigFile(path.join(root, "tsconfig.json"), ts.sys.readFile).config, ts.sys, root);
  const program = ts.createProgram([face], options);
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(face);
  const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
  if (module === undefined) {
    throw new Error(`${face} exports nothing`);
  }
  return checker
    .getExportsOfModule(module)
    .map((symbol) => ((symbol.flags & ts.SymbolFlags.Alias) !== 0 ? checker.getAliasedSymbol(symbol) : symbol))
    .flatMap((symbol) => {
      const declaration = symbol.valueDeclaration;
      if (declaration === undefined || !exported.has(symbol.getName()) || checker.getTypeOfSymbol(symbol).getCallSignatures().length === 0) {
        return [];
      }
      return [
        {
          name: symbol.getName(),
          file: path.relative(root, declaration.getSourceFile().fileName),
          sentence: firstSentence(ts.displayPartsToString(symbol.getDocumentationComment(checker))),
        },
      ];
    })
    .filter(({ file }) => !unitNames.includes(file))
    .sort((one, other) => (one.file === other.file ? (one.name < other.name ? -1 : 1) : one.file < other.file ? -1 : 1));
}
