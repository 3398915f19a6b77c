import type { NamedPlayer } from "../reading.ts";
import { withFaceNamed, withLieNamed } from "./angleText.ts";
import type { CalcFault, WrittenNumber } from "./fields.ts";
import { modelNamed } from "./modelNamed.ts";
import { type CalcQuestion, readCalc } from "./readCalc.ts";
import { sleeveFields, sleeveWishFields } from "./sleeveFields.ts";

export type SleeveWords = CalcQuestion<typeof sleeveFields>;
export type SleeveWishWords = CalcQuestion<typeof sleeveWishFields>;

export interface SleeveQuestion {
  readonly asked: SleeveWords;
  /** Null when nothing is wished. */
  readonly wished: SleeveWishWords | null;
  /** The sleeve of the stock that is named; null when none is. */
  readonly sleeveName: string | null;
  readonly faults: readonly CalcFault[];
}

const wishWord = /\b(?:wants?|wanted|wish(?:es)?|needs?)\b/i;
const LEAST_LIE_DEG = 48;
const MOST_CHANGE_DEG = 4;

/** A wished lie is that of a club or a change of it, nothing between. */
function lieFaults(lie: WrittenNumber | undefined): readonly CalcFault[] {
  if (lie === undefined || (lie.change ? lie.value <= MOST_CHANGE_DEG : lie.value >= LEAST_LIE_DEG)) return [];
  const range = { kind: "range", name: "lie", min: LEAST_LIE_DEG, max: sleeveWishFields.lie.max, unit: "°, or 1 upright" } as const;
  return [{ word: `lie ${lie.written}`, accepted: range, guess: null }];
}

/** Reads a head and its sleeve, and behind `want` what the club should read. */
export function readSleeve(text: string, sleeveNames: readonly string[], players: readonly NamedPlayer[]): SleeveQuestion {
  const wishFrom = wishWord.exec(text);
  const described = wishFrom === null ? text : text.slice(0, wishFrom.index);
  const wish = wishFrom === null ? "" : text.slice(wishFrom.index + wishFrom[0].length);
  const named = /\bsleeve (?:tilt|rated)\b/i.test(described) ? null : modelNamed(described, "sleeve", sleeveNames);
  const asked = readCalc(withFaceNamed(named?.rest ?? described), sleeveFields, { players });
  const wished = wishFrom === null ? null : readCalc(withLieNamed(withFaceNamed(wish.replace(/\b(?:true|squared)\b/gi, " "))), sleeveWishFields);
  const { tilt, rated, ring, clock } = asked.values;
  return {
    asked,
    wished,
    sleeveName: named?.name ?? null,
    faults: [
      ...(named?.fault == null ? [] : [named.fault]),
      ...asked.faults,
      ...(wished?.faults ?? []),
      ...lieFaults(wished?.values.lie),
      ...(tilt !== undefined && rated !== undefined ? [once("rated", "tilt or rating")] : []),
      ...tooMuchTilt([ring, tilt]),
      ...(ring !== undefined && clock !== undefined ? [once("clock", "ring or clock")] : []),
    ],
  };
}

/** Two pieces together lean no farther than one may. */
function tooMuchTilt(pieces: readonly (WrittenNumber | undefined)[]): readonly CalcFault[] {
  const written = pieces.filter((piece) => piece !== undefined);
  if (written.reduce((sum, { value }) => sum + value, 0) <= sleeveFields.tilt.max) return [];
  const range = { kind: "range", name: "ring and tilt together", min: 0, max: sleeveFields.tilt.max, unit: "°" } as const;
  return [{ word: written.map((piece) => piece.written).join(" and "), accepted: range, guess: null }];
}

const once = (word: string, name: string): CalcFault => ({ word, accepted: { kind: "once", name }, guess: null });
