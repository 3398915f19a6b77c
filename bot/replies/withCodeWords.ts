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

/** A card as others may see it: wherever a restricted name stands, typed by people or read from the record, its code word stands. */
export function withCodeWords(card: Card, words: readonly CodeWord[]): Card {
  return words.reduce<Card>((shown, { name, code }) => {
    const whole = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name)}(?![\\p{L}\\p{N}])`, "giu");
    return inEveryString(shown, (text) => text.replace(whole, () => code)) as Card;
  }, card);
}
