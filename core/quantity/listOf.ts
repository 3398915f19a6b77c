import { DomainError } from "../errors.ts";

/**
 * A list that is neither too short nor too long.
 *
 * @param list - as it came
 * @param limits - its name and how many entries it may have, both bounds included
 * @returns the same list
 * @throws {DomainError} `list-of-wrong-size` when it has fewer or more
 */
export function listOf<T>(list: readonly T[], limits: { readonly field: string; readonly min: number; readonly max: number }): readonly T[] {
  if (list.length < limits.min || list.length > limits.max) {
    throw new DomainError("list-of-wrong-size", { ...limits, count: list.length });
  }
  return list;
}
