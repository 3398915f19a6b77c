import { editDistance } from "../boundary/editDistance.ts";
import type { Card } from "../chat/types.ts";
import type { CodeWord } from "../operations/codeWords.ts";

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

function inEveryString(value: unknown, change: (text: string) => string): unknown {
  if (typeof value === "string") {
    return change(value);
  }
  if (Array.isArray(value)) {
    return value.map((part) => inEveryString(part, change));
  }
  return typeof value === "object" && value !== null
    ? Object.fromEntries(Object.entries(value).map(([name, part]) => [name, inEveryString(part, change)]))
    : value;
}

const oneWord = /\p{L}{5,}/gu;

/** Misspelt by a letter it still gives the name away; a longer word that holds the name is another one. */
function isNear(word: string, name: string): boolean {
  const [typed, known] = [word.toLowerCase(), name.toLowerCase()];
  return !typed.includes(known) && editDistance(typed, known, 1) === 1;
}

/** A card as others may see it: wherever a restricted name stands, typed by people or read from the record, its code word stands. */
export function withCodeWords(card: Card, words: readonly CodeWord[]): Card {
  return words.reduce<Card>((shown, { name, code }) => {
    const whole = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name)}(?![\\p{L}\\p{N}])`, "giu");
    return inEveryString(shown, (text) => text.replace(whole, () => code).replace(oneWord, (word) => (isNear(word, name) ? code : word))) as Card;
  }, card);
}
