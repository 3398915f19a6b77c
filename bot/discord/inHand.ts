/** What is under way: nothing that goes wrong with one arrival ends the bot, and a stop waits for the rest. */
export interface InHand {
  readonly run: (doing: string, work: () => Promise<void>) => Promise<void>;
  /** Resolves when nothing is under way. */
  readonly idle: () => Promise<void>;
  /** What has been under way for longer than so many milliseconds; null when nothing has. */
  readonly stuckFor: (ms: number) => string | null;
}

/** @param wallMs - the clock on the wall */
export function makeInHand(wallMs: () => number, log: (error: unknown, doing: string) => void): InHand {
  const underWay = new Map<Promise<void>, { readonly doing: string; readonly sinceMs: number }>();
  const run = async (doing: string, work: () => Promise<void>): Promise<void> => {
    const running = work().catch((error: unknown) => log(error, doing));
    underWay.set(running, { doing, sinceMs: wallMs() });
    await running;
    underWay.delete(running);
  };
  const idle = async (): Promise<void> => {
    while (underWay.size > 0) {
      await Promise.all(underWay.keys());
    }
  };
  const stuckFor = (ms: number): string | null => [...underWay.values()].find(({ sinceMs }) => wallMs() - sinceMs > ms)?.doing ?? null;
  return { run, idle, stuckFor };
}
