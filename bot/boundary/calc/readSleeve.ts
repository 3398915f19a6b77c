import type { NamedPlayer } from "../reading.ts";
import { AMOUNT, withFaceNamed, withLieNamed } from "./angleText.ts";
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
/** No head is stronger or weaker by itself: `1/2 stronger` is a wish, with or without the word. */
const wishedLoft = new RegExp(
  String.raw`(?<!\b(?:loft|face|lie|tilt|rated|ring|clock)(?: is| by)?[ =:]{1,3})(?<![\d./]|\d )(${AMOUNT}) (?=(?:stronger|weaker)\b)`,
  "i",
);
const LEAST_LIE_DEG = 48;
const MOST_CHANGE_DEG = 4;

/** A wished lie is that of a club or a change of it, nothing between. */
function lieFaults(lie: WrittenNumber | undefined): readonly CalcFault[] {
  if (lie === undefined || (lie.change ? lie.value <= MOST_CHANGE_DEG : lie.value >= LEAST_LIE_DEG)) return [];
  const range = { kind: "range", name: "lie", min: LEAST_LIE_DEG, max: sleeveWishFields.lie.max, unit: "°, or 1 upright" } as const;
  return [{ word: `lie ${lie.written}`, accepted: range, guess: null }];
}

/** The text before a wish, and the wish; null where there is none. */
function withWishApart(text: string): { readonly described: string; readonly wish: string | null } {
  const word = wishWord.exec(text);
  const at = word?.index ?? wishedLoft.exec(text)?.index ?? null;
  return at === null ? { described: text, wish: null } : { described: text.slice(0, at), wish: text.slice(at + (word?.[0].length ?? 0)) };
}

/** Reads a head and its sleeve, and behind `want` what the club should read. */
export function readSleeve(text: string, sleeveNames: readonly string[], players: readonly NamedPlayer[]): SleeveQuestion {
  const { described, wish } = withWishApart(text);
  const named = /\bsleeve (?:tilt|rated)\b/i.test(described) ? null : modelNamed(described, "sleeve", sleeveNames);
  const asked = readCalc(withFaceNamed(named?.rest ?? described), sleeveFields, { players });
  const wished = wish === null ? null : readCalc(withLieNamed(withFaceNamed(wish.replace(/\b(?:true|squared)\b/gi, " "))), sleeveWishFields);
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
