import { makeSettler } from "./makeSettler.ts";

/** Knows whether all that was said before now has been read. */
export interface MissedReader {
  readonly isComplete: () => boolean;
  /** The line is gone: until it is back nothing read is all there is. */
  readonly lose: () => void;
  /** The line is back: what was said meanwhile has yet to be read. */
  readonly regain: () => void;
  readonly read: () => Promise<void>;
}

export function makeMissedReader(readMissed: () => Promise<void>): MissedReader {
  let losses = 1;
  let lossesRead = 0;
  let isConnected = true;
  const read = makeSettler(async () => {
    const before = losses;
    await readMissed();
    lossesRead = before;
  });
  return {
    isComplete: () => isConnected && lossesRead === losses,
    lose: () => {
      losses += 1;
      isConnected = false;
    },
    regain: () => {
      losses += 1;
      isConnected = true;
    },
    read,
  };
}
