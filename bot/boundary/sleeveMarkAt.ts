import { numberAt } from "./numberAt.ts";
import { type Word, wordsOf } from "./wordsOf.ts";

const sides: Readonly<Record<string, string>> = {
  standard: "standard",
  std: "standard",
  stnd: "standard",
  stock: "standard",
  neutral: "standard",
  strong: "strong",
  str: "strong",
  strng: "strong",
  weak: "weak",
  wk: "weak",
  upright: "upright",
  uprite: "upright",
  flat: "flat",
};

interface Mark {
  readonly side: string;
  readonly amount: number | null;
  readonly next: number;
}

function markAt(words: readonly Word[], at: number, numberFirst: boolean): Mark | null {
  const led = numberFirst ? numberAt(words, at) : null;
  const sideAt = led === null ? at : led.next;
  const text = words[sideAt]?.text ?? "";
  const side = Object.hasOwn(sides, text) ? sides[text] : undefined;
  if (side === undefined) return null;
  if (led !== null) return { side, amount: led.value, next: sideAt + 1 };
  const following = words[at + 1];
  const after = following !== undefined && (following.gap === "space" || following.gap === "tight") ? numberAt(words, at + 1) : null;
  const takes =
    after !== null &&
    !after.signed &&
    after.value <= 3 &&
    (side === "strong" || side === "weak") &&
    (after.unit === null || after.unit === "mark" || after.unit === "deg");
  return { side, amount: takes && after !== null ? after.value : null, next: takes && after !== null ? after.next : at + 1 };
}

/** The printed mark that stands there word for word, the longest of several. */
function printedAt(words: readonly Word[], at: number, marks: readonly string[]): { readonly mark: string; readonly count: number } | null {
  return marks.reduce<ReturnType<typeof printedAt>>((longest, mark) => {
    const printed = wordsOf(mark).words;
    const stands = printed.length > (longest?.count ?? 0) && printed.every(({ text }, index) => words[at + index]?.text === text);
    return stands ? { mark, count: printed.length } : longest;
  }, null);
}

/** The printed marks a sleeve setting may mean; after `sleeve`, or when turning, allows what is unclear elsewhere. */
export function sleeveMarkAt(
  words: readonly Word[],
  at: number,
  marks: readonly string[],
  setting: { readonly named: boolean; readonly turning: boolean },
): { readonly marks: readonly string[]; readonly next: number } | null {
  const printed = printedAt(words, at, marks);
  if (printed !== null && (setting.named || setting.turning || printed.count > 1)) return { marks: [printed.mark], next: at + printed.count };
  const written = markAt(words, at, setting.named);
  if (written === null) return null;
  const plain = written.side === "standard" || written.amount !== null;
  if (!setting.named && !setting.turning && !plain) return null;
  const read = marks.map((mark) => {
    const printedWords = wordsOf(mark).words;
    const hit = markAt(printedWords, 0, false);
    return { mark, read: hit, isWhole: hit?.next === printedWords.length };
  });
  const sameSide = read.filter(({ read }) => read !== null && read.side === written.side);
  const exact = sameSide.filter(({ read, isWhole }) => isWhole && read?.amount === written.amount);
  const chosen = exact.length > 0 ? exact : sameSide;
  return { marks: exact.length === 1 || written.amount === null ? chosen.map(({ mark }) => mark) : [], next: written.next };
}
