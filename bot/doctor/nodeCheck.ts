import { type Check, fault, ok } from "./finding.ts";

/** Holds the running version against `engines` of package.json: lower and upper bounds with blanks between them. */
export const nodeCheck = (version: string, range: string): Check => ({
  name: "node",
  look: () =>
    range.split(/\s+/).every((bound) => within(version, bound))
      ? ok(`Node ${version}`)
      : fault(`Node ${version}, and ${range} is needed`, `Install a Node version of ${range}, then run npm ci again`),
});

function within(version: string, bound: string): boolean {
  const [, sign, limit] = /^(>=|<)(\d+(?:\.\d+)*)$/.exec(bound) ?? [];
  if (sign === undefined || limit === undefined) {
    throw new Error(`the bound ${bound} in package.json is not read: such as >=20.12 or <21`);
  }
  const order = compare(version, limit);
  return sign === "<" ? order < 0 : order >= 0;
}

function compare(left: string, right: string): number {
  const numbers = (text: string): readonly number[] => text.split(".").map((part) => Number.parseInt(part, 10));
  const [a, b] = [numbers(left), numbers(right)];
  const place = [0, 1, 2].find((index) => (a[index] ?? 0) !== (b[index] ?? 0)) ?? 0;
  return (a[place] ?? 0) - (b[place] ?? 0);
}
