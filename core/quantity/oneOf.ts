import { DomainError } from "../errors.ts";

/**
 * A word that is one of the known ones.
 *
 * @param value - as it came
 * @param known - what is accepted
 * @param field - its name
 * @returns the same word
 * @throws {DomainError} `quantity-unreadable` when it is none of them
 */
export function oneOf<T extends string>(value: T, known: readonly T[], field: string): T {
  if (!known.includes(value)) {
    throw new DomainError("quantity-unreadable", { field, written: String(value), accepted: known.join(", ") });
  }
  return value;
}
