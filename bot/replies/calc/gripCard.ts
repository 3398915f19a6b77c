import type { gripLayersForSize } from "../../../core/club/gripLayersForSize.ts";
import type { Hand } from "../../../core/kinds.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Json, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { plural } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { quarters } from "./calcNumbers.ts";

type Layers = ReturnType<typeof gripLayersForSize>;

/** Layers for a size, by either model of the wall. */
export interface LayersWanted {
  readonly wantedMm: number;
  readonly rubber: Layers;
  readonly rigid: Layers;
}

/** A grip under one hand. */
export interface GripPlaceFacts {
  readonly hand: Hand;
  /** As written, or the whole layers that come nearest to the size wished. */
  readonly layers: number;
  readonly diameterMm: number;
  readonly overMm: number;
  readonly rigidDiameterMm: number;
  readonly rigidOverMm: number;
  readonly wanted: LayersWanted | null;
}

interface Tape {
  readonly massG: number;
  readonly swingWeightPoints: number;
}

export interface GripFacts {
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly coreMm: number;
  readonly shaftAt2InMm: number;
  readonly shaftAt6InMm: number;
  /** False when only the build-up under the lower hand is known, not the size. */
  readonly knowsLowerNominal: boolean;
  readonly upper: GripPlaceFacts;
  readonly lower: GripPlaceFacts;
  readonly tape: { readonly least: Tape; readonly most: Tape };
}

const MM_PER_INCH = 25.4;
/** As the trade writes a grip: `.913 in`, `+.013`. */
const decimal = (mm: number): string => (Math.abs(mm) / MM_PER_INCH).toFixed(3).replace(/^0/, "");
const size = (mm: number): string => `${decimal(mm)} in (${mm.toFixed(1)} mm)`;
const over = (mm: number): string => `${mm < 0 ? "-" : "+"}${decimal(mm)}`;

const layersWords = (layers: number): string => (layers === 0 ? "no layers" : plural(layers, "layer"));

function placeLine(name: string, inches: number, place: GripPlaceFacts, knowsNominal: boolean): Line {
  const reads = knowsNominal ? `${size(place.diameterMm)}, ${over(place.overMm)}` : `${over(place.overMm)} in over its own size`;
  const bound = knowsNominal ? decimal(place.rigidDiameterMm) : over(place.rigidOverMm);
  return line({ strong: `${name} hand (${place.hand}), ${inches} in: ` }, `${layersWords(place.layers)}, ${reads}; at most ${bound}`);
}

function wantedLine(name: string, place: GripPlaceFacts, knowsNominal: boolean): readonly Line[] {
  const { wanted } = place;
  if (wanted === null) return [];
  const aim = `${name} hand to ${knowsNominal ? size(wanted.wantedMm) : "the same step"}`;
  if (wanted.rubber.kind === "refused") {
    return [line(`${aim}: ${decimal(wanted.rubber.tooThickMm)} in too thick without tape; a larger core, or a smaller grip`)];
  }
  const least = wanted.rigid.kind === "reached" ? wanted.rigid.exactLayers : 0;
  return [line(`${aim}: ${wanted.rubber.exactLayers.toFixed(1)} layers, at least ${least.toFixed(1)}`)];
}

function tapeLine({ tape: { least, most }, upper, lower }: GripFacts): readonly Line[] {
  if (upper.layers + lower.layers === 0) return [];
  const [few, many] = [quarters(least.swingWeightPoints), quarters(most.swingWeightPoints)];
  const points = few === many ? `${few} points` : `${few} to ${many} points`;
  return [line(`Tape ${least.massG.toFixed(1)} to ${most.massG.toFixed(1)} g: swing weight ${points}`)];
}

/** Rules allow no bulge: a grip grows no thicker down the shaft. */
const bulgeLine = ({ knowsLowerNominal, upper, lower }: GripFacts): readonly Line[] =>
  knowsLowerNominal && lower.diameterMm > upper.diameterMm + 0.01
    ? [line("Thicker under the lower hand than under the upper: the rules allow no bulge or waist, so look at it")]
    : [];

const placeData = (place: GripPlaceFacts): Json => ({
  hand: place.hand,
  layersCount: place.layers,
  overMm: place.overMm,
  rigidOverMm: place.rigidOverMm,
  wantedMm: place.wanted?.wantedMm ?? null,
  rubberLayersCount: place.wanted?.rubber.kind === "reached" ? place.wanted.rubber.exactLayers : null,
  rigidLayersCount: place.wanted?.rigid.kind === "reached" ? place.wanted.rigid.exactLayers : null,
  tooThickMm: place.wanted?.rubber.kind === "refused" ? place.wanted.rubber.tooThickMm : null,
});

/** What a grip measures under each hand, the layers for a size, and what the tape weighs and does. */
export function gripReply(facts: GripFacts): Reply {
  const { upper, lower, tape, named, knowsLowerNominal } = facts;
  const isTooThick = [upper, lower].some(({ wanted }) => wanted?.rubber.kind === "refused");
  const title = `${named === null ? "Grip" : `${named}: grip`} ${size(upper.diameterMm)} at 2 in`;
  return reply(
    calcCard({
      view: "grip",
      title,
      tone: isTooThick ? "attention" : "plain",
      inputs: facts.inputs,
      lines: [
        line(`Core ${size(facts.coreMm)} on a butt of ${size(facts.shaftAt2InMm)}`),
        placeLine("Upper", 2, upper, true),
        placeLine("Lower", 6, lower, knowsLowerNominal),
        ...wantedLine("Upper", upper, true),
        ...wantedLine("Lower", lower, knowsLowerNominal),
        ...tapeLine(facts),
        ...bulgeLine(facts),
        line("The caliper on the finished grip wins"),
      ],
      leavesOut:
        "mounting tape (part of the nominal size), stretch, and the overlap of a spiral wrap. Rubber keeps its volume; a wall that stays as thick is the upper bound. A bench agrees to .005 in. Tape of 110 to 140 g/m².",
      data: {
        coreMm: facts.coreMm,
        shaftAt2InMm: facts.shaftAt2InMm,
        shaftAt6InMm: facts.shaftAt6InMm,
        gripAt2InMm: upper.diameterMm,
        gripAt6InMm: knowsLowerNominal ? lower.diameterMm : null,
        rigidAt2InMm: upper.rigidDiameterMm,
        rigidAt6InMm: knowsLowerNominal ? lower.rigidDiameterMm : null,
        upper: placeData(upper),
        lower: placeData(lower),
        tapeLeastG: tape.least.massG,
        tapeMostG: tape.most.massG,
        tapeLeastPoints: tape.least.swingWeightPoints,
        tapeMostPoints: tape.most.swingWeightPoints,
      },
    }),
  );
}
