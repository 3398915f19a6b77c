/** Runs some work on demand, never twice at once; asked during a run it runs once more after it. */
export function makeSettler(work: () => Promise<void>): () => Promise<void> {
  let isWanted = false;
  let running: Promise<void> | null = null;
  const run = async (): Promise<void> => {
    while (isWanted) {
      isWanted = false;
      await work();
    }
  };
  return () => {
    isWanted = true;
    running ??= run().finally(() => {
      running = null;
    });
    return running;
  };
}
