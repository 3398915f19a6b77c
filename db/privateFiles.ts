import { chmodSync, closeSync, existsSync, openSync } from "node:fs";

/** Rights of a folder that nobody but its owner may enter. */
export const PRIVATE_FOLDER = 0o700;
const PRIVATE_FILE = 0o600;

/** Makes an empty file that only its owner may read; one that is there is left as it is. */
export function createPrivate(path: string): void {
  closeSync(openSync(path, "a", PRIVATE_FILE));
}

/** Lets only the owner read a file that may be there. One of another user keeps its rights. */
export function keepPrivate(path: string): void {
  if (!existsSync(path)) {
    return;
  }
  try {
    chmodSync(path, PRIVATE_FILE);
  } catch (error) {
    if (!(error instanceof Error && "code" in error && error.code === "EPERM")) {
      throw error;
    }
  }
}
