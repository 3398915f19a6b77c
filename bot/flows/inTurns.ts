/** Drives work that comes in slices, other work let through between two of them. */
export async function inTurns<T>(work: Generator<number, T, void>): Promise<T> {
  for (;;) {
    const slice = work.next();
    if (slice.done === true) {
      return slice.value;
    }
    await new Promise((resolve) => setImmediate(resolve));
  }
}
