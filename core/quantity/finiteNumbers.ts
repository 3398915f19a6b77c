import { inRange } from "./inRange.ts";

/**
 * A record in which every number, at any depth, is finite: the guard at the door of a function that takes a whole
 * snapshot, of which a sum may use a part only.
 *
 * @param record - plain values, lists and records; functions in it are let through
 * @param field - its name, which the path to a number begins with
 * @returns the same record
 * @throws {DomainError} `quantity-out-of-range` at the first number that is NaN or infinite, `field` being its path
 */
export function finiteNumbers<T>(record: T, field: string): T {
  if (isFiniteThroughout(record)) return record;
  if (typeof record === "number") {
    inRange(record, { field, unit: "" });
  } else if (typeof record === "object" && record !== null) {
    for (const [key, value] of Object.entries(record)) {
      finiteNumbers(value, `${field}.${key}`);
    }
  }
  return record;
}

/** Without the paths of its numbers, which only a refusal names: large records are looked at often. */
function isFiniteThroughout(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  for (const part of Array.isArray(value) ? value : Object.values(value)) if (!isFiniteThroughout(part)) return false;
  return true;
}
