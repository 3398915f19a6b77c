/** The platform counts from the first moment of 2015. */
const EPOCH_MS = 1_420_070_400_000;

/** The lowest id that a message of that moment can have. */
export function snowflakeAt(atMs: number): string {
  return (BigInt(Math.max(0, Math.floor(atMs) - EPOCH_MS)) << 22n).toString();
}

/** Whether an id is younger than another. */
export const isYounger = (id: string, than: string): boolean => BigInt(id) > BigInt(than);

/** The moment in an id. */
export const snowflakeTime = (id: string): number => Number(BigInt(id) >> 22n) + EPOCH_MS;
