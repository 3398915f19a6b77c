import { inRange } from "../quantity/inRange.ts";
import type { Grams, Millimetres } from "../quantity/units.ts";
import { checkedSetUp, type FrequencySetUp } from "./frequencySetUp.ts";

/** A shaft of one mass per length. */
export interface EvenShaft {
  /** Bare, tip to butt. */
  readonly lengthMm: Millimetres;
  readonly massG: Grams;
}

/** What swings, in SI: the shaft past the clamp and the tip mass. */
interface FreeShaft {
  /** From the clamp's edge to the centre of the tip mass. */
  readonly lengthM: number;
  /** Of the shaft past the clamp. */
  readonly massKg: number;
  readonly tipMassKg: number;
}

/** Cycles a minute of one radian a second. */
export const CPM_PER_RADIAN_A_SECOND = 60 / (2 * Math.PI);
/** The part of its mass that a uniform cantilever moves with its tip (Rayleigh). */
export const EFFECTIVE_BEAM_MASS = 33 / 140;
const LEAST_FREE_MM = 1;

/** The free part of an evenly heavy shaft in its set-up; refuses what cannot be. */
export function freeShaft(shaft: EvenShaft, setUp: FrequencySetUp): FreeShaft {
  const { clampMm, tipMassG, tipMassBeyondTipMm = 0 } = checkedSetUp(setUp);
  const lengthMm = inRange(shaft.lengthMm, { field: "lengthMm", unit: "mm", min: 1, max: 2000 });
  const massG = inRange(shaft.massG, { field: "massG", unit: "g", min: 0.1, max: 500 });
  const pastClampMm = inRange(lengthMm - clampMm, { field: "freeLengthMm", unit: "mm", min: LEAST_FREE_MM });
  const lengthM = inRange(pastClampMm + tipMassBeyondTipMm, { field: "freeLengthMm", unit: "mm", min: LEAST_FREE_MM }) / 1000;
  return { lengthM, massKg: (massG * pastClampMm) / lengthMm / 1000, tipMassKg: tipMassG / 1000 };
}
