import { gripBuildUp } from "../../../core/club/gripBuildUp.ts";
import type { GripAtPlace, GripWall } from "../../../core/club/gripDiameter.ts";
import { unstretchedRubber } from "../../../core/club/gripDiameter.ts";
import { type GripPlace, gripHand } from "../../../core/club/gripHand.ts";
import { gripLayersForSize } from "../../../core/club/gripLayersForSize.ts";
import { gripTape } from "../../../core/club/gripTape.ts";
import { type Millimetres, millimetres } from "../../../core/quantity/units.ts";
import type { GripFacts, GripPlaceFacts, LayersWanted } from "../../replies/calc/gripCard.ts";
import type { GripInputs } from "./gripInputs.ts";

const rigid: GripWall = { kind: "rigid" };
/** Common practice, no source: what tape weighs. */
const TAPE_G_PER_M2 = { least: 110, most: 140 } as const;

type Places = Readonly<Record<GripPlace, GripAtPlace>>;

/** The size wished at a place: as much over the grip's own there as at 2 in. */
function wantedAt(place: GripPlace, places: Places, wantedMm: Millimetres): Millimetres {
  return millimetres(places[place].nominalMm + wantedMm - places.upper.nominalMm);
}

function layersFor(place: GripPlace, places: Places, { wantedMm, layerMm }: GripInputs): LayersWanted | null {
  if (wantedMm === null) return null;
  const at = wantedAt(place, places, wantedMm);
  return { wantedMm: at, rubber: gripLayersForSize(places[place], at, layerMm), rigid: gripLayersForSize(places[place], at, layerMm, rigid) };
}

const wholeLayers = (wanted: LayersWanted | null, written: number): number =>
  wanted === null ? written : wanted.rubber.kind === "reached" ? wanted.rubber.wholeLayers : 0;

/** What the tape weighs and does: layers under both hands over its whole length, those under one hand over half of it. */
function tapeOf(layers: Readonly<Record<GripPlace, number>>, places: Places, inputs: GripInputs, grammageGPerM2: number) {
  const { layerMm, tapeLengthMm, capMm } = inputs;
  const [halfMm, both] = [tapeLengthMm / 2, Math.min(layers.upper, layers.lower)];
  const under = millimetres(places.upper.shaftMm);
  const extra = layers.upper > layers.lower ? { place: "upper" as const, fromMm: 0 } : { place: "lower" as const, fromMm: halfMm };
  const whole = gripTape({ layers: both, layerMm, lengthMm: tapeLengthMm, shaftMm: under, grammageGPerM2 }, millimetres(capMm + halfMm));
  const more = gripTape(
    {
      layers: layers[extra.place] - both,
      layerMm,
      lengthMm: millimetres(halfMm),
      shaftMm: millimetres(places[extra.place].shaftMm + 2 * both * layerMm),
      grammageGPerM2,
    },
    millimetres(capMm + extra.fromMm + halfMm / 2),
  );
  return { massG: whole.massG + more.massG, swingWeightPoints: whole.swingWeightPoints + more.swingWeightPoints };
}

/** A grip under both hands: its size by rubber and by a rigid wall, layers for a size, and the tape; core and butt must be known. */
export function gripSums(
  inputs: GripInputs,
  coreMm: Millimetres,
  shaftMm: Readonly<Record<GripPlace, Millimetres>>,
): Pick<GripFacts, "upper" | "lower" | "tape"> {
  const { nominalMm, layerMm } = inputs;
  const at = (place: GripPlace): GripAtPlace => ({ nominalMm: nominalMm[place], coreMm, shaftMm: shaftMm[place] });
  const places: Places = { upper: at("upper"), lower: at("lower") };
  const wanted = { upper: layersFor("upper", places, inputs), lower: layersFor("lower", places, inputs) };
  const layers = { upper: wholeLayers(wanted.upper, inputs.layers.upper), lower: wholeLayers(wanted.lower, inputs.layers.lower) };
  const taped = (place: GripPlace) => ({ ...places[place], layers: layers[place], layerMm });
  const built = (wall: GripWall) => gripBuildUp({ upper: taped("upper"), lower: taped("lower") }, inputs.hand, wall);
  const [rubber, hard] = [built(unstretchedRubber), built(rigid)];
  const factsOf = (place: GripPlace): GripPlaceFacts => ({
    hand: gripHand(inputs.hand, place),
    layers: layers[place],
    diameterMm: rubber[place].diameterMm,
    overMm: rubber[place].overMm,
    rigidDiameterMm: hard[place].diameterMm,
    rigidOverMm: hard[place].overMm,
    wanted: wanted[place],
  });
  return {
    upper: factsOf("upper"),
    lower: factsOf("lower"),
    tape: { least: tapeOf(layers, places, inputs, TAPE_G_PER_M2.least), most: tapeOf(layers, places, inputs, TAPE_G_PER_M2.most) },
  };
}
