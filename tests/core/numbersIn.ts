/** Where a number stands in the arguments of a call: keys and indices from the list of arguments on. */
export type Place = readonly (string | number)[];

/** Rows of the record are named by whole numbers that no sum uses. */
const isName = (key: string | number) => typeof key === "string" && (key === "id" || key.endsWith("Id"));

/** Every place of a number in a value, of a list its first entry only. */
export function numbersIn(value: unknown, at: Place = []): readonly Place[] {
  if (typeof value === "number") {
    return at.some(isName) ? [] : [at];
  }
  if (Array.isArray(value)) {
    const isArguments = at.length === 0;
    return (isArguments ? value : value.slice(0, 1)).flatMap((entry, index) => numbersIn(entry, [...at, index]));
  }
  return typeof value === "object" && value !== null ? Object.entries(value).flatMap(([key, entry]) => numbersIn(entry, [...at, key])) : [];
}

/** The same value with another number at a place. */
export function withNumberAt(value: unknown, [first, ...rest]: Place, number: number): unknown {
  if (first === undefined) {
    return number;
  }
  if (Array.isArray(value)) {
    return value.map((entry, index) => (index === first ? withNumberAt(entry, rest, number) : entry));
  }
  const record = value as Readonly<Record<string, unknown>>;
  return { ...record, [first]: withNumberAt(record[first], rest, number) };
}
