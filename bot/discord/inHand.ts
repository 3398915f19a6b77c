/** What is under way: nothing that goes wrong with one arrival ends the bot, and a stop waits for the rest. */
export interface InHand {
  readonly run: (doing: string, work: () => Promise<void>) => Promise<void>;
  /** Resolves when nothing is under way. */
  readonly idle: () => Promise<void>;
}

export function makeInHand(log: (error: unknown, doing: string) => void): InHand {
  const underWay = new Set<Promise<void>>();
  const run = async (doing: string, work: () => Promise<void>): Promise<void> => {
    const running = work().catch((error: unknown) => log(error, doing));
    underWay.add(running);
    await running;
    underWay.delete(running);
  };
  const idle = async (): Promise<void> => {
    while (underWay.size > 0) {
      await Promise.all(underWay);
    }
  };
  return { run, idle };
}
