import { inRange } from "../quantity/inRange.ts";
import { type Millimetres, millimetres } from "../quantity/units.ts";
import { checkedGrip, type GripAtPlace, type GripWall, gripDiameter, MOST_LAYERS, unstretchedRubber } from "./gripDiameter.ts";

/** How many layers of tape make a size; or how much too thick the grip is without any. */
type LayersForSize =
  | {
      readonly kind: "reached";
      readonly exactLayers: number;
      /** Whole layers that come nearest, and what they make. */
      readonly wholeLayers: number;
      readonly wholeDiameterMm: Millimetres;
    }
  | { readonly kind: "refused"; readonly tooThickMm: Millimetres };

const ROUNDING = 1e-9;

/** The diameter under the grip that makes the wanted one; not a number when the rubber alone is thicker. */
function diameterUnder(grip: GripAtPlace, wanted: number, wall: GripWall): number {
  const { nominalMm, coreMm } = checkedGrip(grip, wall);
  return wall.kind === "rigid" ? wanted - (nominalMm - coreMm) : Math.sqrt(wanted ** 2 - (nominalMm ** 2 - coreMm ** 2) / wall.stretchFactor);
}

/**
 * Layers of tape that build a grip up to a wanted diameter at one place: at 2 in below the cap for the upper hand, at
 * 6 in for the lower.
 *
 *     rubber: n = ( √(D² − (D₀² − c²)/s) − b ) / 2t     rigid: n = ( D − D₀ + c − b ) / 2t
 *
 * The inverse of `gripDiameter`, exact. Tape comes in whole layers, so the nearest number of those is given as well;
 * the final caliper reading wins.
 *
 * @param grip - D₀, c and b in mm
 * @param wanted - D in mm
 * @param layer - t in mm
 * @param wall - the model, with s for rubber
 * @returns the layers, exact and whole, with the diameter in mm the whole ones make; or by how many mm it is too thick with none
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible or D would take more than 100 layers
 * @see fixtures/published/gripBuildUp.json
 */
export function gripLayersForSize(grip: GripAtPlace, wanted: Millimetres, layer: Millimetres, wall: GripWall = unstretchedRubber): LayersForSize {
  const wantedMm = inRange(wanted, { field: "wantedMm", unit: "mm", min: 1, max: 100 });
  const bareMm = gripDiameter(grip, { layers: 0, layerMm: layer }, wall);
  if (bareMm > wantedMm + 1e-9) {
    return { kind: "refused", tooThickMm: millimetres(bareMm - wantedMm) };
  }
  const thickestMm = gripDiameter(grip, { layers: MOST_LAYERS, layerMm: layer }, wall);
  inRange(wantedMm, { field: "wantedMm", unit: "mm", max: thickestMm * (1 + ROUNDING) });
  const exactLayers = Math.max(0, (diameterUnder(grip, wantedMm, wall) - grip.shaftMm) / (2 * layer));
  const wholeLayers = Math.round(exactLayers);
  return { kind: "reached", exactLayers, wholeLayers, wholeDiameterMm: gripDiameter(grip, { layers: wholeLayers, layerMm: layer }, wall) };
}
