import type { Option } from "../chat/defineCommand.ts";
import type { Values } from "../chat/types.ts";

export type CommandLine =
  | { readonly kind: "command"; readonly command: string; readonly values: Values }
  | { readonly kind: "misused"; readonly reason: string };

export type CommandOption = Pick<Option, "name" | "takes">;

const keyedValue = /(?<!\S)([A-Za-z][A-Za-z0-9_-]*)=(?:"([^"]*)"|(\S*))[ \t]*/g;

/**
 * Reads what follows the `/` of a command: `name view? key=value … the rest`.
 *
 * A name of two words is tried first. `key="two words"` keeps its spaces; a key that is no option of the command stays
 * text. What is left goes to the first option that has no value yet, except that an option `view` takes one word only and
 * that a file is always named by its key.
 *
 * @param optionsOf - the options of a command in order, null when there is none of that name
 */
export function readCommandLine(written: string, optionsOf: (command: string) => readonly CommandOption[] | null): CommandLine {
  const text = written.trim();
  const [first = "", second = ""] = text.split(/\s+/, 2).map((word) => word.toLowerCase());
  for (const [command, shape] of [
    [`${first} ${second}`, /^\S+\s+\S+/],
    [first, /^\S+/],
  ] as const) {
    const options = second === "" && command !== first ? null : optionsOf(command);
    if (options !== null) return readValues(command, options, text.replace(shape, ""));
  }
  return { kind: "misused", reason: `no command /${first}` };
}

function readValues(command: string, known: readonly CommandOption[], text: string): CommandLine {
  const options = known.map(({ name }) => name);
  const values = new Map<string, string>();
  const twice = new Set<string>();
  const bare = text.replace(keyedValue, (whole, key: string, quoted?: string, plain?: string) => {
    const option = key.toLowerCase();
    if (!options.includes(option)) return whole;
    if (values.has(option)) twice.add(option);
    values.set(option, quoted ?? plain ?? "");
    return "";
  });
  const [repeated] = twice;
  if (repeated !== undefined) return { kind: "misused", reason: `/${command} has ${repeated}= twice` };
  const bareTakers = known.filter(({ takes }) => takes !== "file").map(({ name }) => name);
  const left = giveRest(bareTakers, values, bare.trim());
  if (left !== "")
    return { kind: "misused", reason: `/${command} takes ${options.length === 0 ? "nothing more" : options.join(", ")}; left over: ${left}` };
  return { kind: "command", command, values: Object.fromEntries(values) };
}

/** Hands the bare text to options without a value; returns what no option was there for. */
function giveRest(options: readonly string[], values: Map<string, string>, bare: string): string {
  const option = options.find((name) => !values.has(name));
  if (bare === "" || option === undefined) return bare;
  if (option !== "view") {
    values.set(option, bare);
    return "";
  }
  const [view = ""] = bare.split(/\s/, 1);
  values.set(option, view);
  return giveRest(options, values, bare.slice(view.length).trim());
}
