import type { ShaftPiece } from "../../../core/buildSheet/parts.ts";
import { id } from "../../../core/kinds.ts";
import { millimetres } from "../../../core/quantity/units.ts";
import { someShaft, someSleeve } from "./someParts.ts";

/** A prepared Dunlin 60 X, 1/2 in off the tip. */
export const somePiece = (given: Partial<ShaftPiece> = {}): ShaftPiece => ({
  id: id(71),
  model: someShaft({}),
  state: "tipped",
  tipTrimMm: millimetres(12.7),
  sleeve: null,
  logo: null,
  cutLengthMm: null,
  place: "Rack 1",
  placeId: id(1),
  inPlayersBin: false,
  ...given,
});

/** The same on the loft sleeve, logo down at its standard mark. */
export const someSleevedPiece = (given: Partial<ShaftPiece> = {}): ShaftPiece =>
  somePiece({ id: id(72), state: "sleeved", sleeve: someSleeve({}), logo: "down", ...given });
