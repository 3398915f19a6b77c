import { type AlongElement, type BeamElement, beamElement, type NodeMatrix } from "./beamElement.ts";
import { firstPast } from "./firstPast.ts";

/** A cantilever from its clamp to its tip, with a rigid mass there; SI units. */
export interface Cantilever {
  readonly lengthM: number;
  /** EI in N·m² and λ in kg/m, at the clamp (near) and at the tip (far), even in between. */
  readonly stiffness: AlongElement;
  readonly density: AlongElement;
  readonly tipMassKg: number;
  readonly tipMassBeyondTipM: number;
  readonly tipMassInertiaKgM2: number;
}

/** Within 1e-8 of what finer divisions and the exact root of a uniform beam give. */
const ELEMENTS = 40;

/** The beam cut into elements of one length, from the tip to the clamp, at one ω². */
function elementsFromTip(beam: Cantilever, omegaSquared: number): readonly BeamElement[] {
  const at = (ends: AlongElement, fromTip: number) => ends.far + ((ends.near - ends.far) * fromTip) / ELEMENTS;
  const within = (ends: AlongElement, index: number) => ({ near: at(ends, index + 1), far: at(ends, index) });
  return Array.from({ length: ELEMENTS }, (_, index) =>
    beamElement(beam.lengthM / ELEMENTS, within(beam.stiffness, index), within(beam.density, index), omegaSquared),
  );
}

const determinant = (node: NodeMatrix) => node.ww * node.ss - node.ws ** 2;

const sum = (one: NodeMatrix, other: NodeMatrix): NodeMatrix => ({ ww: one.ww + other.ww, ws: one.ws + other.ws, ss: one.ss + other.ss });

const isPositive = (node: NodeMatrix) => node.ww > 0 && determinant(node) > 0;

/** What a node's neighbour feels of it, the node itself eliminated: near − cross·node⁻¹·crossᵀ. */
function condensed({ near, cross }: BeamElement, node: NodeMatrix): NodeMatrix {
  const through = (w1: number, s1: number, w2: number, s2: number) =>
    (w1 * w2 * node.ss - (w1 * s2 + s1 * w2) * node.ws + s1 * s2 * node.ww) / determinant(node);
  return {
    ww: near.ww - through(cross.ww, cross.ws, cross.ww, cross.ws),
    ws: near.ws - through(cross.ww, cross.ws, cross.sw, cross.ss),
    ss: near.ss - through(cross.sw, cross.ss, cross.sw, cross.ss),
  };
}

/** The rigid mass on the tip: −ω²·M of a mass whose centre lies e past the tip. */
function tipNode(beam: Cantilever, omegaSquared: number): NodeMatrix {
  const { tipMassKg: mass, tipMassBeyondTipM: beyond, tipMassInertiaKgM2: inertia } = beam;
  return { ww: -omegaSquared * mass, ws: -omegaSquared * mass * beyond, ss: -omegaSquared * (inertia + mass * beyond ** 2) };
}

/**
 * Whether ω² lies past the first mode. The nodes are eliminated one by one from the tip to the clamp, which holds the last;
 * K − ω²·M has no negative pivot exactly as long as ω² lies below every mode (Sylvester's law of inertia).
 */
function isPastFirstMode(beam: Cantilever, omegaSquared: number): boolean {
  let outer = tipNode(beam, omegaSquared);
  for (const element of elementsFromTip(beam, omegaSquared)) {
    const node = sum(element.far, outer);
    if (!isPositive(node)) {
      return true;
    }
    outer = condensed(element, node);
  }
  return false;
}

/** First natural frequency ω of a tapered cantilever with a rigid tip mass, in rad/s, by finite elements. */
export function lowestFrequency(beam: Cantilever): number {
  const past = (guess: number): number => (isPastFirstMode(beam, guess) ? guess : past(2 * guess));
  return Math.sqrt(firstPast((omegaSquared) => isPastFirstMode(beam, omegaSquared), 0, past(1)));
}
