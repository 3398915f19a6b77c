import type { Measure } from "./measures.ts";

interface Named {
  /** Other words for the same, such as `hd` or `swing weight`. */
  readonly also?: readonly string[];
  /** May stand without a value: it is what the question asks for. */
  readonly asked?: boolean;
}
/** Angles whose directions have words of their own. */
export type AngleTurn = "squaredLoftDeg" | "seatedLieDeg" | "soledFaceDeg";
/** What numbers may be, both ends included, in the unit the measure is kept in (mm, g, °, points, kg·cm², m, s). */
interface Numbers extends Named {
  readonly measure: Measure;
  readonly min: number;
  readonly max: number;
  /** Ranks guesses at a mistyped number; left out, the middle of the range. */
  readonly usual?: number;
  /** What is meant where no unit is written; left out, the measure's usual one. */
  readonly unit?: string;
  /** A change by so much at most does too, `1/2 shorter`, or `1/2` where no value is so small; without it only a field that goes below 0 takes a sign. */
  readonly mostChange?: number;
  /** The angle words of direction it listens to: `2 flat` is no loft. Left out, all of them. */
  readonly turns?: AngleTurn;
  /** A value of this kind without a name before it is meant for this. */
  readonly bare?: boolean;
}
interface NumberField extends Numbers {
  readonly kind: "number";
}
/** One number or more in a row: `lofts 46 50 54`, `56 to 54`. */
interface NumbersField extends Numbers {
  readonly kind: "numbers";
}
/** One of some words. */
interface WordField<W extends string = string> extends Named {
  readonly kind: "word";
  readonly words: readonly W[];
  /** Other spellings of the words, of one word or more: `lh` is `left`. */
  readonly spelled?: Readonly<Record<string, W>>;
  /** One of the words without the name before it is meant for this. */
  readonly bare?: boolean;
}
/** Free words up to the next comma or known name: a model, a mark. */
interface TextField extends Named {
  readonly kind: "text";
}
/** A mass at a place from the end of the grip cap, any number of times: `sleeve 6.5 at 42.75`. */
export interface PartField extends Named {
  readonly kind: "part";
  /** `head at 36.85`: its mass may be what is looked for. */
  readonly massMayBeMissing?: boolean;
  /** Ranks guesses at a mistyped mass. */
  readonly usualG?: number;
  /** No nearer to the cap than this. */
  readonly nearestMm?: number;
  /** A club has one of it. */
  readonly once?: boolean;
}
export type Field = NumberField | NumbersField | WordField | TextField | PartField;
export type Fields = Readonly<Record<string, Field>>;

/** A number as written and as kept. */
export interface WrittenNumber {
  /** In the unit the measure is kept in. */
  readonly value: number;
  /** A sign or a word of direction was written: `+1/2`, `2 shorter`. */
  readonly change: boolean;
  readonly written: string;
  /** As shown behind the number; empty for a count or a swing weight. */
  readonly unit: string;
}
export interface WrittenPart {
  readonly name: string;
  readonly mass: WrittenNumber | null;
  readonly place: WrittenNumber;
}

type ValueOf<F extends Field> = F extends NumberField
  ? WrittenNumber
  : F extends NumbersField
    ? readonly WrittenNumber[]
    : F extends WordField<infer W>
      ? W
      : F extends TextField
        ? string
        : never;

/** What was read, by the names of the fields; parts stand in `parts` in the order they were written. */
export type ValuesOf<F extends Fields> = { readonly [K in keyof F]?: ValueOf<F[K]> };

/** One input as understood: `head 200 g at 44.5 in`; `assumed` when nobody wrote it. */
export interface Understood {
  readonly name: string;
  readonly values: readonly { readonly written: string; readonly unit: string }[];
  readonly between: "at" | ",";
  readonly assumed: boolean;
}

/** A word that cannot be used, what would be accepted instead, and what may have been meant. */
export interface CalcFault {
  readonly word: string;
  readonly accepted: Accepted;
  readonly guess: string | null;
}

/** What would do in place of a fault; worded in replies. */
export type Accepted =
  | { readonly kind: "range"; readonly name: string; readonly min: number; readonly max: number; readonly unit: string }
  | { readonly kind: "units"; readonly name: string; readonly units: readonly string[] }
  | { readonly kind: "words"; readonly name: string; readonly words: readonly string[] }
  | { readonly kind: "names"; readonly names: readonly string[] }
  | { readonly kind: "part"; readonly name: string }
  | { readonly kind: "swing"; readonly name: string }
  | { readonly kind: "once"; readonly name: string }
  | { readonly kind: "value"; readonly name: string }
  | { readonly kind: "text"; readonly name: string }
  | { readonly kind: "needed"; readonly name: string };

/** An input nobody wrote, with the value counted on. */
export const assumed = (name: string, written: number | string, unit: string): Understood => ({
  name,
  values: [{ written: String(written), unit }],
  between: ",",
  assumed: true,
});

/** An input nobody wrote because the record has it. */
export const onRecord = (name: string, written: number | string, unit: string): Understood => ({ ...assumed(name, written, unit), assumed: false });

/** Something that has to be written and is not. */
export const needed = (name: string): CalcFault => ({ word: "", accepted: { kind: "needed", name }, guess: null });
