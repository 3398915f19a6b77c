import { makeSettler } from "./makeSettler.ts";

/** Knows whether all that was said before now has been read. */
export interface MissedReader {
  readonly isComplete: () => boolean;
  /** From now on something may be missing. */
  readonly lose: () => void;
  readonly read: () => Promise<void>;
}

export function makeMissedReader(readMissed: () => Promise<void>): MissedReader {
  let losses = 1;
  let lossesRead = 0;
  const read = makeSettler(async () => {
    const before = losses;
    await readMissed();
    lossesRead = before;
  });
  return {
    isComplete: () => lossesRead === losses,
    lose: () => {
      losses += 1;
    },
    read,
  };
}
