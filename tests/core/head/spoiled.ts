import { degrees } from "../../../core/quantity/units.ts";

type Path = readonly (string | number)[];

const pathsOfNumbers = (value: unknown): readonly Path[] => {
  if (typeof value === "number") {
    return [[]];
  }
  return typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([key, one]) => pathsOfNumbers(one).map((path) => [key, ...path]))
    : [];
};

const replaced = (value: unknown, [first, ...rest]: Path, wrong: number): unknown => {
  if (first === undefined) {
    return wrong;
  }
  if (Array.isArray(value)) {
    return value.map((one, index) => (String(index) === first ? replaced(one, rest, wrong) : one));
  }
  return { ...(value as object), [first]: replaced((value as Record<string, unknown>)[first], rest, wrong) };
};

/** The same arguments, each time with another number of theirs spoiled, and where. */
export const spoiled = <A extends readonly unknown[]>(args: A): readonly { readonly where: string; readonly args: A }[] =>
  pathsOfNumbers(args).flatMap((path) =>
    [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY].map((wrong) => ({
      where: `${path.join(".")} ${wrong}`,
      args: replaced(args, path, degrees(wrong)) as A,
    })),
  );
