import { type CalcWords, goesOn } from "./calcWords.ts";
import type { CalcFault, PartField, WrittenPart } from "./fields.ts";
import { type QuantityHit, quantityAt } from "./quantityAt.ts";

const LIGHTEST_G = 0.01;
const HEAVIEST_G = 1000;
const FARTHEST_MM = 1500;

export type WantedPart = { readonly name: string } & Partial<Omit<PartField, "kind">>;

/** Reads `200 at 44.5`: a mass, and a place from the end of the grip cap; null when no such pair stands here. */
export function partAt(
  source: CalcWords,
  at: number,
  { name, massMayBeMissing = false, usualG, nearestMm = 0 }: WantedPart,
): { readonly part: WrittenPart | null; readonly faults: readonly CalcFault[]; readonly next: number } | null {
  const mass = quantityAt(source, at, {
    name,
    measure: "mass",
    min: LIGHTEST_G,
    max: HEAVIEST_G,
    ...(usualG === undefined ? {} : { usual: usualG }),
  });
  const placeFrom = mass === null ? at : mass.next;
  if ((mass === null && !massMayBeMissing) || !goesOn(source, placeFrom) || source.words[placeFrom]?.text !== "at") return null;
  const wantedPlace = { name: `${name} at`, measure: "length", min: nearestMm, max: FARTHEST_MM } as const;
  const place = goesOn(source, placeFrom + 1) ? quantityAt(source, placeFrom + 1, wantedPlace) : null;
  if (place === null) return null;
  const faults = [mass, place].flatMap((hit: QuantityHit | null) => hit?.fault ?? []);
  const part = faults.length > 0 ? null : { name, mass: mass?.number ?? null, place: place.number };
  return { part, faults, next: place.next };
}
