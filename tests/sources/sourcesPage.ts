import type { OutsideCheck } from "./checksInTests.ts";
import type { PublicFunction } from "./publicFunctions.ts";
import type { PublishedTable } from "./publishedTables.ts";

const link = (text: string, file: string) => `[${text}](../../${file})`;

const originalOf = ({ address, opened }: PublishedTable): string =>
  opened ? "original opened" : address === null ? "worked from the formulas, no original" : "original not opened";

function checkLine(check: OutsideCheck, tables: ReadonlyMap<string, PublishedTable>): string {
  const test = link("test", check.testFile);
  switch (check.by) {
    case "table": {
      const table = tables.get(check.name);
      if (table === undefined) {
        throw new Error(`${check.testFile} names a table ${check.name} that is not there`);
      }
      return `- table [${check.name}](${check.name}.json) (${originalOf(table)}): ${check.what} · ${test}`;
    }
    case "library":
      return `- library ${check.name}: ${check.what} · ${test}`;
    case "law":
      return `- law: ${check.what} · ${test}`;
  }
}

const section = (text: string, lines: readonly string[]) => [`## ${text}`, "", ...(lines.at(-1) === "" ? lines : [...lines, ""])];

/** The page as markdown: what every public function is held against, which have nothing, and the tables. */
export function sourcesPage(
  functions: readonly PublicFunction[],
  checks: readonly OutsideCheck[],
  tables: ReadonlyMap<string, PublishedTable>,
): string {
  const strays = checks.filter(({ checked }) => !functions.some(({ name }) => name === checked));
  const of = (name: string) => checks.filter(({ checked }) => checked === name);
  const checked = functions.filter(({ name }) => of(name).length > 0);
  const without = functions.filter(({ name }) => of(name).length === 0);
  const used = new Set(checks.filter(({ by }) => by === "table").map(({ name }) => name));
  const lines = [
    "# What the calculation core is held against",
    "",
    "Made by `npm run sources` from the public face of core, the titles of its tests and the tables of this folder. Do not edit.",
    "",
    `${functions.length} public functions, ${checked.length} of them held against something outside, ${without.length} against nothing. Names of units are left out.`,
    "",
    ...section(
      "Functions",
      checked.flatMap(({ name, file, sentence }) => [
        `### ${name}`,
        "",
        `${link(file, file)}. ${sentence}`,
        "",
        ...of(name).map((check) => checkLine(check, tables)),
        "",
      ]),
    ),
    ...section(
      "Functions held against nothing outside",
      without.length === 0 ? ["None."] : without.map(({ name, file, sentence }) => `- \`${name}\` (${link(file, file)}): ${sentence}`),
    ),
    ...section(
      "Checks of parts that are not public",
      strays.length === 0 ? ["None."] : strays.map((check) => `- \`${check.checked}\` ${checkLine(check, tables).slice(2)}`),
    ),
    ...section(
      "Tables",
      [...tables].map(
        ([name, table]) =>
          `- [${name}](${name}.json), ${originalOf(table)}${used.has(name) ? "" : ", used by no check of core"}: ${table.source}${table.address === null ? "" : ` · ${table.address}`}`,
      ),
    ),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}
