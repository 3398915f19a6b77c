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

/** The printed marks a sleeve setting may mean; after `sleeve`, or when turning, allows what is unclear elsewhere. */
export function sleeveMarkAt(
  words: readonly Word[],
  at: number,
  marks: readonly string[],
  setting: { readonly named: boolean; readonly turning: boolean },
): { readonly marks: readonly string[]; readonly next: number } | null {
  const written = markAt(words, at, setting.named);
  if (written === null) return null;
  const plain = written.side === "standard" || written.amount !== null;
  if (!setting.named && !setting.turning && !plain) return null;
  const printed = marks.map((mark) => ({ mark, read: markAt(wordsOf(mark).words, 0, false) }));
  const sameSide = printed.filter(({ read }) => read !== null && read.side === written.side);
  const exact = sameSide.filter(({ read }) => read?.amount === written.amount);
  const chosen = exact.length > 0 ? exact : sameSide;
  return { marks: exact.length === 1 || written.amount === null ? chosen.map(({ mark }) => mark) : [], next: written.next };
}
