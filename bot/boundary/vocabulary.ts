import { type OrderKind, orderKinds } from "../../core/kinds.ts";
import { own } from "./own.ts";
import type { RangedQuantity } from "./quantityRanges.ts";

/** Words that say nothing an order needs; skipped wherever they stand. */
const fillers = new Set(
  `a an the his her their my our your him them it me us we i you please pls plz plse ta thx thanks thankyou cheers and n but with w also plus
   is be are was to of at on in for from as so then now new make made want wants need needs would should can could like'd do get give go going
   change set put keep take have has ok okay yes yeah hey hi sir mate guys team again just only about around exactly both hands hand order one please!
   true bent deg degrees inch inches send sent deliver up already thank today if possible quick quickly when ready this that`.split(/\s+/),
);
const remarkStarters = new Set("its it's hes he's shes she's he she they theyre because cos coz cuz bc since says said thinks feels".split(" "));

/** The clause each trade word begins, in every spelling people use. */
const amountWords: Readonly<Record<string, RangedQuantity>> = {
  loft: "squaredLoftDeg",
  lft: "squaredLoftDeg",
  true: "squaredLoftDeg",
  squared: "squaredLoftDeg",
  lie: "seatedLieDeg",
  face: "soledFaceDeg",
  bounce: "bounceDeg",
  bnc: "bounceDeg",
  length: "lengthMm",
  len: "lengthMm",
  lgth: "lengthMm",
  lngth: "lengthMm",
  swing: "swingWeightPoints",
  swingweight: "swingWeightPoints",
  swt: "swingWeightPoints",
  sw: "swingWeightPoints",
  total: "totalMassG",
  tot: "totalMassG",
  headweight: "headMassG",
  hw: "headMassG",
  tip: "tipTrimMm",
  tipped: "tipTrimMm",
  wrap: "wraps",
  wraps: "wraps",
};
const otherClauseWords = new Set(
  "head hd stamped shaft shft grp flex logo graphics spine ferrule sleeve screw melt lead grip rib neck line grind stamp note notes by before b4 like".split(
    " ",
  ),
);
const kindWords: Readonly<Record<string, OrderKind>> = {
  ...Object.fromEntries(orderKinds.map((kind) => [kind, kind])),
  bld: "build",
  buld: "build",
  swp: "swap",
  trun: "turn",
  fix: "repair",
  broken: "broke",
  snapped: "broke",
};

export const isFiller = (word: string): boolean => fillers.has(word);
export const startsRemark = (word: string): boolean => remarkStarters.has(word);
export const quantityOfWord = (word: string): RangedQuantity | null => own(amountWords, word);
export const isClauseWord = (word: string): boolean => own(amountWords, word) !== null || otherClauseWords.has(word);
/** Words a misspelt word is compared with. */
export const mendableWords: readonly string[] = [
  ...Object.keys(amountWords),
  ...otherClauseWords,
  "gamer",
  "backup",
  "driver",
  "putter",
  "shorter",
  "longer",
  "stronger",
  "weaker",
  "upright",
  "flatter",
  "heavier",
  "lighter",
  "closed",
].filter((word) => word.length >= 4);

/** The kind of work a word names; a letter left out or two swapped are forgiven, another letter is not (`built` is a story). */
export function kindOfWord(word: string): { readonly kind: OrderKind; readonly misspelt: boolean } | null {
  const plain = word.replace(/-/g, "");
  const kind = own(kindWords, plain);
  if (kind !== null) return { kind, misspelt: false };
  const slipped = orderKinds.find((name) => name.length >= 5 && plain.length >= 4 && slips(name).has(plain));
  return slipped === undefined ? null : { kind: slipped, misspelt: true };
}

function slips(word: string): ReadonlySet<string> {
  const at = Array.from({ length: word.length }, (_, index) => index);
  const left = at.map((index) => word.slice(0, index) + word.slice(index + 1));
  const swapped = at.slice(1).map((index) => word.slice(0, index - 1) + (word[index] ?? "") + (word[index - 1] ?? "") + word.slice(index + 1));
  return new Set([...left, ...swapped]);
}
