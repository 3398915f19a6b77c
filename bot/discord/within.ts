/** Resolves when the work is done, or after so long all the same. */
export async function within(patienceMs: number, work: Promise<unknown>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const patience = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, patienceMs);
  });
  try {
    await Promise.race([work, patience]);
  } finally {
    clearTimeout(timer);
  }
}
