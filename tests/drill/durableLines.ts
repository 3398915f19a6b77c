import { closeSync, existsSync, fsyncSync, openSync, readFileSync, writeSync } from "node:fs";

/** Adds one line to a file, on disk before this returns. */
export function appendLine(path: string, line: unknown): void {
  const file = openSync(path, "a");
  try {
    writeSync(file, `${JSON.stringify(line)}\n`);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

export function readLines<T>(path: string): readonly T[] {
  const text = existsSync(path) ? readFileSync(path, "utf8") : "";
  return text
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line) as T);
}
