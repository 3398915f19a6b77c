const plainLetters: Readonly<Record<string, string>> = { ß: "ss", ø: "o", ł: "l", æ: "ae", œ: "oe", đ: "d", ð: "d", þ: "th", ı: "i" };

/** Lower case, accents off, curly marks straightened: the form in which names and words are compared. */
export function foldText(text: string): string {
  return text
    .toLowerCase()
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/[ßøłæœđðþı]/g, (letter) => plainLetters[letter] ?? letter)
    .replace(/[’‘ʼ`´]/g, "'")
    .replace(/[‐‑‒–—−]/g, "-");
}
