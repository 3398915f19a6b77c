/** With four bytes a letter still less than a file system takes, a number behind it included. */
const MOST_LETTERS = 60;

/** A name that stays in its folder, on any machine: letters, digits, `.`, `_` and `-`, never hidden, its ending kept. */
export function fileName(name: string): string {
  const safe = name.normalize("NFC").replace(/[^\p{L}\p{N}._-]+/gu, "-");
  const end = [...safe].slice(-MOST_LETTERS).join("");
  return end.replace(/^[.-]+/, "") || "file";
}
