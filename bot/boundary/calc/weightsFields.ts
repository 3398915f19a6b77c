import type { CalcWords } from "./calcWords.ts";
import { typedBetween } from "./calcWords.ts";
import { clubFields } from "./clubFields.ts";
import { quantityAt } from "./quantityAt.ts";
import { reworded } from "./reworded.ts";

const { head, shaft, grip, sleeve, ferrule, epoxy, tape, cut, cap } = clubFields;
const fromCentre = { kind: "number", measure: "length", min: 0, max: 150, unit: "mm" } as const;
const shift = { kind: "number", measure: "length", min: 0, max: 20, unit: "mm" } as const;

/** Weights for a head: what is wished, the club before, ports, what may be put in, and lead by mass or by length. */
export const weightsFields = {
  swing: { kind: "number", measure: "swing", min: -30, max: 40, bare: true, also: ["swing weight", "swingweight", "sw"] },
  points: { kind: "number", measure: "points", min: -30, max: 30, bare: true },
  head,
  "head mass": { kind: "number", measure: "mass", min: 50, max: 600, usual: 200, also: ["headweight", "head weight"] },
  back: { ...shift, also: ["backward", "deeper"] },
  forward: shift,
  toe: { ...shift, also: ["toeward"] },
  heel: { ...shift, also: ["heelward"] },
  now: { kind: "number", measure: "swing", min: -40, max: 40, also: ["reads", "from", "gauge"] },
  "screws in": { kind: "numbers", measure: "mass", min: 0.1, max: 60, also: ["screw in", "in it"] },
  screws: { kind: "numbers", measure: "mass", min: 0.1, max: 60, also: ["screw", "weights", "stock"] },
  ports: { kind: "number", measure: "count", min: 0, max: 4, also: ["port"] },
  "rear port": { ...fromCentre, also: ["rear", "port rear", "back port"] },
  "front port": { ...fromCentre, also: ["front", "port front"] },
  "toe port": { ...fromCentre, also: ["port toe"] },
  "heel port": { ...fromCentre, also: ["port heel"] },
  melt: { kind: "number", measure: "mass", min: 0.5, max: 30, also: ["hot melt"] },
  "tip weights": { kind: "numbers", measure: "mass", min: 0.5, max: 20, also: ["tip weight", "tip"] },
  lead: { kind: "number", measure: "mass", min: 0, max: 100, also: ["lead tape mass"] },
  "lead length": { kind: "number", measure: "length", min: 1, max: 2000 },
  without: { kind: "word", words: ["lead"], bare: true, spelled: { "no lead": "lead", "without lead": "lead" } },
  width: { kind: "number", measure: "length", min: 3, max: 100, also: ["lead width", "wide"] },
  thickness: { kind: "number", measure: "length", min: 0.02, max: 2, unit: "mm", also: ["thick"] },
  roll: { kind: "number", measure: "mass", min: 0.1, max: 200, also: ["roll mass"] },
  "roll length": { kind: "number", measure: "length", min: 10, max: 5000 },
  shaft,
  grip,
  sleeve,
  ferrule,
  epoxy,
  tape,
  cut,
  cap,
} as const;

const skips = new Set(["to", "of", "is", "tape"]);

/** `head 200` is a mass wished where no place follows, `lead 4 1/2 in` a length: the same words otherwise stand for the part and its mass. */
export const weightsText = (text: string): string => reworded(text, (source, at) => headWished(source, at) ?? leadByLength(source, at));

function headWished(source: CalcWords, at: number) {
  const { words } = source;
  const from = skips.has(words[at + 1]?.text ?? "") ? at + 2 : at + 1;
  if (words[at]?.text !== "head" && words[at]?.text !== "hd") return null;
  const mass = quantityAt(source, from, { name: "head", measure: "mass", min: 0, max: Number.MAX_VALUE });
  return mass === null || words[mass.next]?.text === "at" ? null : { words: `head mass ${typedBetween(source, from, mass.next)}`, next: mass.next };
}

function leadByLength(source: CalcWords, at: number) {
  const { words } = source;
  if (words[at]?.text !== "lead") return null;
  const from = skips.has(words[at + 1]?.text ?? "") ? at + 2 : at + 1;
  const length = quantityAt(source, from, { name: "lead", measure: "length", min: 0, max: Number.MAX_VALUE });
  const hasUnit = length !== null && length.fault === null && /\p{L}|["”″]/u.test(typedBetween(source, from, length.next));
  return hasUnit ? { words: `lead length ${typedBetween(source, from, length.next)}`, next: length.next } : null;
}
