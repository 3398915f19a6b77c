/** Runs some work unless it is running: then whoever asks waits for that run. */
export function oneAtATime(work: () => Promise<void>): () => Promise<void> {
  let running: Promise<void> | null = null;
  return () => {
    running ??= work().finally(() => {
      running = null;
    });
    return running;
  };
}
