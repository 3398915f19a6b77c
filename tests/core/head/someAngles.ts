import fc from "fast-check";
import type { BareHead } from "../../../core/head/attitudeOf.ts";
import type { OnePieceSleeve, SleevePiece } from "../../../core/head/sleeve.ts";
import type { SleeveTilt } from "../../../core/head/sleeveTilt.ts";
import type { Hand } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";

interface PlainHead {
  readonly soledLoftDeg: number;
  readonly soledFaceDeg: number;
  readonly designLieDeg: number;
}

export const bareHead = ({ soledLoftDeg, soledFaceDeg, designLieDeg }: PlainHead, hand: Hand = "right"): BareHead => ({
  soledLoftDeg: degrees(soledLoftDeg),
  soledFaceDeg: degrees(soledFaceDeg),
  designLieDeg: degrees(designLieDeg),
  hand,
});

export const tilted = (tiltDeg: number, clockDeg: number): SleeveTilt => ({ tiltDeg: degrees(tiltDeg), clockDeg: degrees(clockDeg) });

/** A piece that prints the clock itself. */
export const pieceOf = (tiltDeg: number, clocksDeg: readonly number[]): SleevePiece => ({
  tiltDeg: degrees(tiltDeg),
  marks: clocksDeg.map((clockDeg) => ({ mark: String(clockDeg), clockDeg: degrees(clockDeg) })),
});

export const sleeveOf = (tiltDeg: number, clocksDeg: readonly number[], standardMark = String(clocksDeg[0])): OnePieceSleeve => ({
  ...pieceOf(tiltDeg, clocksDeg),
  standardMark,
});

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const someHands = fc.constantFrom<Hand>("right", "left");

export const someHeads = fc
  .record({ soledLoftDeg: between(5, 30), soledFaceDeg: between(-3, 3), designLieDeg: between(54, 64), hand: someHands })
  .map(({ hand, ...head }) => bareHead(head, hand));

/** Never near 0: the axis of a tilt that is none has no direction. */
export const someTilts = fc
  .record({ tiltDeg: between(0.25, 4), clockDeg: between(0, 360) })
  .map(({ tiltDeg, clockDeg }) => tilted(tiltDeg, clockDeg));
