import { type AmountQuantity, directionOf } from "../amountAt.ts";
import { nearestNumbers } from "../nearestNumbers.ts";
import { type NumberHit, numberAt } from "../numberAt.ts";
import { swingWeightAt } from "../swingWeightAt.ts";
import { type CalcWords, goesOn, typedBetween } from "./calcWords.ts";
import type { AngleTurn, CalcFault, WrittenNumber } from "./fields.ts";
import { type Measure, measures, perUnit, unitWords, usualUnit } from "./measures.ts";

/** What a number is for: its name as shown, and what it may be. */
export interface Wanted {
  readonly name: string;
  readonly measure: Measure;
  readonly min: number;
  readonly max: number;
  readonly unit?: string;
  readonly usual?: number;
  readonly mostChange?: number;
  readonly turns?: AngleTurn;
}

export interface QuantityHit {
  readonly number: WrittenNumber;
  readonly next: number;
  readonly fault: CalcFault | null;
}

/** A length of so many without a unit is in mm: no club has a hundred inches. */
const MOST_INCHES_WITHOUT_UNIT = 100;
const directed: Readonly<Partial<Record<Measure, readonly AmountQuantity[]>>> = {
  mass: ["headMassG"],
  length: ["lengthMm"],
  angle: ["squaredLoftDeg", "seatedLieDeg", "soledFaceDeg"],
  points: ["swingWeightPoints"],
};

function directionAt(source: CalcWords, at: number, quantities: readonly AmountQuantity[]): -1 | 0 | 1 {
  const word = source.words[at]?.text ?? "";
  return goesOn(source, at) ? (quantities.map((quantity) => directionOf(quantity, word)).find((sign) => sign !== 0) ?? 0) : 0;
}

/** `2 flat` where a loft is wanted: the number is of another angle. */
const turnsAnother = (source: CalcWords, at: number, { measure, turns }: Wanted): boolean =>
  turns !== undefined && directionAt(source, at, [turns]) === 0 && directionAt(source, at, directed[measure] ?? []) !== 0;

const measuredBy = (measure: Measure, unit: string): number | null => (unit === "" ? (measure === "count" ? 1 : null) : perUnit(measure, unit));

/** The word of a unit that measures something else, before a number, is the next name: `length 45 points 2`. */
const isNextName = (source: CalcWords, at: number, unit: string, measure: Measure): boolean =>
  measuredBy(measure, unit) === null && /^[+-]?[\d.]/.test(source.words[at + 1]?.text ?? "");

function unitAt(source: CalcWords, at: number, measure: Measure): string | null {
  const word = source.words[at]?.text ?? "";
  const unit = goesOn(source, at) && Object.hasOwn(unitWords, word) ? (unitWords[word] ?? null) : null;
  return unit === null || isNextName(source, at, unit, measure) ? null : unit;
}

/** The unit behind a number, with a word of direction before or after it: `two more points`, `1/2 in shorter`. */
function behindNumber(source: CalcWords, at: number, found: string | null, { measure, turns }: Wanted) {
  const directions = turns === undefined ? (directed[measure] ?? []) : [turns];
  const before = found === null ? directionAt(source, at, directions) : 0;
  const unitFrom = before === 0 ? at : at + 1;
  const unit = found ?? unitAt(source, unitFrom, measure);
  const afterUnit = found === null && unit !== null ? unitFrom + 1 : unitFrom;
  const after = before === 0 ? directionAt(source, afterUnit, directions) : 0;
  return { unit, sign: before === 0 ? after : before, next: after === 0 ? afterUnit : afterUnit + 1 };
}

/** Reads a number with its unit and checks both; null when none stands here. */
export function quantityAt(source: CalcWords, at: number, wanted: Wanted): QuantityHit | null {
  const { words } = source;
  if (wanted.measure === "swing") {
    const hit = swingWeightAt(words, at, true);
    return hit === null ? null : checked(wanted, numberOf(hit.points, false, typedBetween(source, at, hit.next), ""), hit.next, 1);
  }
  const hit = numberAt(words, at);
  if (hit === null) return null;
  const spoken = hit.unit === null ? null : (unitWords[hit.unit] ?? hit.unit);
  const isApart = hit.next > hit.numberEnd;
  const known = spoken !== null && isApart && isNextName(source, hit.numberEnd, spoken, wanted.measure) ? null : spoken;
  const { unit: found, sign, next } = behindNumber(source, known === null ? hit.numberEnd : hit.next, known, wanted);
  if (sign === 0 && turnsAnother(source, next, wanted)) return null;
  const digits = digitsOf(typedBetween(source, at, hit.numberEnd), hit);
  const isMm = wanted.measure === "length" && found === null && Math.abs(hit.value) >= MOST_INCHES_WITHOUT_UNIT;
  const unit = found ?? (isMm ? "mm" : (wanted.unit ?? usualUnit[wanted.measure] ?? ""));
  const per = measuredBy(wanted.measure, unit);
  if (per === null) {
    const units = Object.keys(measures[wanted.measure]);
    const fault: CalcFault = { word: typedBetween(source, at, next), accepted: { kind: "units", name: wanted.name, units }, guess: null };
    return { number: numberOf(Number.NaN, false, digits, unit), next, fault };
  }
  const value = (sign === 0 ? hit.value : sign * Math.abs(hit.value)) * per;
  const isSmall = wanted.mostChange !== undefined && wanted.min > wanted.mostChange && Math.abs(value) <= wanted.mostChange;
  const isChange = hit.signed || sign !== 0 || isSmall;
  const written = sign === 0 && !isSmall ? digits : `${value < 0 ? "-" : "+"}${digits.replace(/^[+-]/, "")}`;
  return checked(wanted, numberOf(value, isChange, written, unit), next, per);
}

/** `200g` is 200, `44,5` is 44.5, `two` is 2. */
const digitsOf = (typed: string, { value, decimalComma }: NumberHit): string =>
  /[\d¼-¾⅐-⅞]/.test(typed) ? typed.replace(/(\d)[a-z]+$/i, "$1").replace(decimalComma ? "," : "", decimalComma ? "." : "") : String(value);

const numberOf = (value: number, change: boolean, written: string, unit: string): WrittenNumber => ({ value, change, written, unit });

function checked(wanted: Wanted, number: WrittenNumber, next: number, per: number): QuantityHit {
  const word = unitBehind(number.written, number.unit);
  if (number.change && wanted.mostChange === undefined && wanted.min >= 0 && wanted.measure !== "swing") {
    return { number, next, fault: { word, accepted: { kind: "value", name: wanted.name }, guess: null } };
  }
  const most = number.change ? wanted.mostChange : undefined;
  const [least, largest] = most === undefined ? [wanted.min, wanted.max] : [-most, most];
  if (number.value >= least && number.value <= largest) return { number, next, fault: null };
  const [min, max] = [least / per, largest / per];
  const usual = (wanted.usual ?? (wanted.min + wanted.max) / 2) / per;
  const isInside = (value: number): boolean => value >= min && value <= max;
  const [near] = nearestNumbers(number.written, (value) => (isInside(value) ? Math.abs(value - usual) : null));
  const accepted = acceptedNumber(
    { ...wanted, ...(most === undefined ? {} : { name: `a change of ${wanted.name}` }), min: least, max: largest },
    number.unit,
  );
  return { number, next, fault: { word, accepted, guess: near ?? null } };
}

/** `46°`, `46 in`. */
const unitBehind = (written: string, unit: string): string => (unit === "°" ? `${written}°` : `${written} ${unit}`.trim());

/** What a number may be, in the unit it was written in. */
export function acceptedNumber(wanted: Wanted, written?: string): CalcFault["accepted"] {
  if (wanted.measure === "swing") return { kind: "swing", name: wanted.name };
  const unit = written ?? wanted.unit ?? usualUnit[wanted.measure] ?? "";
  const per = perUnit(wanted.measure, unit) ?? 1;
  return { kind: "range", name: wanted.name, min: wanted.min / per, max: wanted.max / per, unit };
}
