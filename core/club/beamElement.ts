/** A symmetric 2 × 2 matrix of a node's deflection and slope. */
export interface NodeMatrix {
  readonly ww: number;
  readonly ws: number;
  readonly ss: number;
}

/** What two ends of a beam element hold against each other; `sw` is the slope of the near end with the deflection of the far. */
export interface BeamElement {
  readonly near: NodeMatrix;
  readonly cross: { readonly ww: number; readonly ws: number; readonly sw: number; readonly ss: number };
  readonly far: NodeMatrix;
}

/** A beam quantity at both ends of an element, even in between. */
export interface AlongElement {
  readonly near: number;
  readonly far: number;
}

/**
 * Dynamic stiffness K − ω²·M of one Euler–Bernoulli element with cubic shapes, for stiffness EI and mass per length λ that
 * change evenly from its near to its far end; K and M are integrated exactly. SI units.
 */
export function beamElement(lengthM: number, stiffness: AlongElement, density: AlongElement, omegaSquared: number): BeamElement {
  const h = lengthM;
  const [p, q] = [stiffness.near / h ** 3, stiffness.far / h ** 3];
  const [m, n] = [(omegaSquared * h * density.near) / 840, (omegaSquared * h * density.far) / 840];
  return {
    near: {
      ww: 6 * (p + q) - 24 * (10 * m + 3 * n),
      ws: h * (4 * p + 2 * q - 2 * (15 * m + 7 * n)),
      ss: h ** 2 * (3 * p + q - (5 * m + 3 * n)),
    },
    cross: {
      ww: -6 * (p + q) - 54 * (m + n),
      ws: h * (2 * p + 4 * q + 2 * (7 * m + 6 * n)),
      sw: -h * (4 * p + 2 * q + 2 * (6 * m + 7 * n)),
      ss: h ** 2 * (p + q + 3 * (m + n)),
    },
    far: {
      ww: 6 * (p + q) - 24 * (3 * m + 10 * n),
      ws: -h * (2 * p + 4 * q - 2 * (7 * m + 15 * n)),
      ss: h ** 2 * (p + 3 * q - (3 * m + 5 * n)),
    },
  };
}
