/** Every entry of a list with the one after it. */
export const neighbours = <T>(list: readonly T[]): readonly (readonly [T, T])[] =>
  list.slice(1).flatMap((after, index) => list.slice(index, index + 1).map((before) => [before, after] as const));
