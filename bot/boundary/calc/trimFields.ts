import { MM_PER_INCH } from "../../../core/quantity/units.ts";
import { reworded } from "./reworded.ts";

/** Of a length or a tip trim, as people ask for it: `1/2 shorter`, `tip 1/2 more`. */
const MOST_CHANGE_MM = 3 * MM_PER_INCH;
const boreWords = ["through", "blind"] as const;

/** A shaft to be cut: the club it is for, the raw shaft, the pieces off it, and a frequency with what it was read at. */
export const trimFields = {
  length: {
    kind: "number",
    measure: "length",
    min: 450,
    max: 1400,
    usual: 1000,
    mostChange: MOST_CHANGE_MM,
    bare: true,
    also: ["len", "playing length", "club length"],
  },
  bore: { kind: "number", measure: "length", min: 0, max: 100, also: ["bore to ground", "stop", "sleeve stop", "stop to ground"] },
  "bore class": { kind: "word", words: boreWords, bare: true, spelled: { "through bore": "through", "blind bore": "blind" } },
  hosel: { kind: "number", measure: "length", min: 10, max: 150, also: ["hosel length"] },
  insertion: { kind: "number", measure: "length", min: 5, max: 100, also: ["insertion depth", "bore depth"] },
  cap: { kind: "number", measure: "length", min: 0, max: 12.7, also: ["grip cap"] },
  raw: { kind: "number", measure: "length", min: 500, max: 1500, usual: 1150, also: ["raw length", "blank"] },
  tip: { kind: "number", measure: "length", min: 0, max: 200, mostChange: MOST_CHANGE_MM, also: ["tip trim", "tipped"] },
  parallel: { kind: "number", measure: "length", min: 0, max: 400, asked: true, also: ["parallel section", "parallel tip"] },
  "shaft tip": { kind: "word", words: ["taper"], bare: true, spelled: { "taper tip": "taper", tapered: "taper" } },
  mass: { kind: "number", measure: "mass", min: 20, max: 250, bare: true, also: ["raw mass", "weight", "raw weight"] },
  balance: { kind: "number", measure: "length", min: 150, max: 1000, also: ["raw balance", "balance point"] },
  "tip piece": { kind: "number", measure: "mass", min: 0.1, max: 60, also: ["tip off-cut", "tip offcut", "tip cut-off"] },
  "butt piece": { kind: "number", measure: "mass", min: 0.1, max: 60, also: ["butt off-cut", "butt offcut", "butt cut-off"] },
  cpm: { kind: "number", measure: "frequency", min: 50, max: 1000, usual: 260, bare: true, also: ["frequency", "freq", "reads"] },
  "read tip": { kind: "number", measure: "length", min: 0, max: 200, also: ["read at tip"] },
  "read length": { kind: "number", measure: "length", min: 450, max: 1400, also: ["read at length", "read at"] },
  clamp: { kind: "number", measure: "length", min: 25, max: 300, also: ["clamp length"] },
  "tip mass": { kind: "number", measure: "mass", min: 1, max: 600, usual: 200, also: ["test mass", "head mass"] },
  ei: { kind: "number", measure: "stiffness", min: 1, max: 500, also: ["stiffness"] },
} as const;

/** `bore blind` as `blind bore`. */
export const trimText = (text: string): string =>
  reworded(text, ({ words }, at) => {
    const known = words[at]?.text === "bore" ? boreWords.find((word) => word === words[at + 1]?.text) : undefined;
    return known === undefined ? null : { words: `${known} bore`, next: at + 2 };
  });
