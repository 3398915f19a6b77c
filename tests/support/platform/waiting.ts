const PATIENCE_MS = 20_000;

export interface Waiting {
  /** Something happened: everything waited for is looked at again. */
  readonly changed: () => void;
  /** Resolves with the first value that is neither null, undefined nor false; refuses after twenty seconds, or as long as told. */
  readonly until: <T>(look: () => T | null | undefined | false, what: string, patienceMs?: number) => Promise<T>;
}

/** Waits for what becomes true by requests and connections, not by time. */
export function makeWaiting(describe: () => string): Waiting {
  const looks = new Set<() => void>();
  return {
    changed: () => {
      for (const look of looks) {
        look();
      }
    },
    until: (look, what, patienceMs = PATIENCE_MS) =>
      new Promise((resolve, reject) => {
        const timer = setTimeout(() => {
          looks.delete(again);
          reject(new Error(`waited in vain for ${what}\n${describe()}`));
        }, patienceMs);
        const again = (): void => {
          const found = look();
          if (found !== null && found !== undefined && found !== false) {
            looks.delete(again);
            clearTimeout(timer);
            resolve(found);
          }
        };
        looks.add(again);
        again();
      }),
  };
}
