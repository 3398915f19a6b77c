const MOST_LETTERS = 80;

/** A name that stays in its folder, on any machine: letters, digits, `.`, `_` and `-`, never hidden. */
export function fileName(name: string): string {
  const safe = name
    .normalize("NFC")
    .replace(/[^\p{L}\p{N}._-]+/gu, "-")
    .replace(/^[.-]+/, "");
  return (
    [...safe]
      .slice(-MOST_LETTERS)
      .join("")
      .replace(/^[.-]+/, "") || "file"
  );
}
