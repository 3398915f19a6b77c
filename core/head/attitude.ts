import { type Degrees, degrees } from "../quantity/units.ts";

/** The readings of a head with its sleeve set. Its soled loft is missing here: no sleeve changes it. */
export interface Attitude {
  /** Loft with the face squared by rolling about the shaft, the shaft at the seated lie. */
  readonly squaredLoftDeg: Degrees;
  /** The same with the shaft held at the design lie, as a player does who always delivers it there. */
  readonly squaredLoftAtDesignLieDeg: Degrees;
  /** Face with the head flat on its design sole, open positive in either hand. */
  readonly soledFaceDeg: Degrees;
  /** Lie of the shaft with the head flat on its design sole. */
  readonly seatedLieDeg: Degrees;
}

export type Reading = keyof Attitude;

export const readings: readonly Reading[] = ["squaredLoftDeg", "squaredLoftAtDesignLieDeg", "soledFaceDeg", "seatedLieDeg"];

/** An attitude put together reading by reading. */
export const attitudeFrom = (of: (reading: Reading) => number): Attitude => ({
  squaredLoftDeg: degrees(of("squaredLoftDeg")),
  squaredLoftAtDesignLieDeg: degrees(of("squaredLoftAtDesignLieDeg")),
  soledFaceDeg: degrees(of("soledFaceDeg")),
  seatedLieDeg: degrees(of("seatedLieDeg")),
});
