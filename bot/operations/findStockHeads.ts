import type { HeadModel, SleeveModel } from "../../core/buildSheet/parts.ts";
import { bondedAttitude } from "../../core/head/attitudeOf.ts";
import { sleeveChart } from "../../core/head/sleeveChart.ts";
import type { Hand, Id } from "../../core/kinds.ts";
import { degrees } from "../../core/quantity/units.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { type HeadOnRecord, headsOnRecord } from "../../db/repositories/stockCount.ts";
import type { Reader } from "../../db/write.ts";
import { type AskedQuantity, type Bound, type HeadQuestion, leavesOutPutters } from "../boundary/stock/findQuestion.ts";

/** A head as a search shows it: read with its sleeve at standard, or bonded. */
export interface FoundHead {
  readonly serial: string;
  readonly model: string;
  readonly hand: Hand;
  readonly family: HeadModel["family"];
  readonly grind: string | null;
  readonly stampedLoftDeg: number;
  readonly sleeved: boolean;
  /** Null when no sleeve on record fits it. */
  readonly squaredLoftDeg: number | null;
  readonly soledFaceDeg: number | null;
  readonly seatedLieDeg: number | null;
  readonly bounceDeg: number | null;
  readonly massG: number;
  readonly place: string;
  readonly truck: string | null;
  readonly at: "here" | "elsewhere" | "held";
  readonly orderNumber: number | null;
}

export interface FoundHeads {
  /** This truck first, then elsewhere, then what orders hold; in each by the quantity asked. */
  readonly heads: readonly FoundHead[];
  /** The few that come nearest when none is found. */
  readonly nearest: readonly FoundHead[];
  /** By what they are ordered. */
  readonly quantity: AskedQuantity;
}

const MOST_NEAREST = 3;
const groups: readonly FoundHead["at"][] = ["here", "elsewhere", "held"];

/** Finds heads by what they measure, anywhere. */
export function findHeads(reader: Reader, question: HeadQuestion, truckId: Id<"truck"> | null): FoundHeads {
  const models = new Map(modelsOf<HeadModel>(reader, "head").map((model) => [model.id, model]));
  const sleeves = modelsOf<SleeveModel>(reader, "sleeve");
  const lying = headsOnRecord(reader).flatMap((row) => {
    const model = models.get(row.model.id);
    return row.place === null || row.head.retiredAt !== null || model === undefined
      ? []
      : [{ row, found: foundHead(row, row.place, { model, sleeves, truckId }) }];
  });
  const scored = lying.map(({ row, found }) => ({ found, misses: missesOf(row, found, question) }));
  const quantity = question.bounds[0]?.quantity ?? "squaredLoftDeg";
  const by = rankOf(question.bounds[0], quantity);
  const heads = scored.filter(({ misses }) => misses.every((miss) => miss === 0)).map(({ found }) => found);
  return {
    heads: heads.sort((one, other) => groups.indexOf(one.at) - groups.indexOf(other.at) || by(one) - by(other) || bySerial(one, other)),
    nearest: heads.length > 0 ? [] : nearestOf(scored),
    quantity,
  };
}

function foundHead(
  { head, model: { restrictedCode, name }, truckName, heldBy }: HeadOnRecord,
  place: NonNullable<HeadOnRecord["place"]>,
  { model, sleeves, truckId }: { readonly model: HeadModel; readonly sleeves: readonly SleeveModel[]; readonly truckId: Id<"truck"> | null },
): FoundHead {
  const isHere = place.truckId !== null && place.truckId === truckId;
  const { serial, hand, stampedLoftDeg, bounceDeg, massG } = head;
  return {
    serial,
    model: restrictedCode ?? name,
    hand,
    family: model.family,
    grind: model.grind,
    stampedLoftDeg,
    sleeved: model.sleeveFamily !== null,
    ...readingsOf(head, model, sleeves),
    bounceDeg,
    massG,
    place: place.label,
    truck: isHere ? null : truckName,
    at: heldBy !== null ? "held" : isHere ? "here" : "elsewhere",
    orderNumber: heldBy?.number ?? null,
  };
}

/** What the gauge reads with the sleeve at its standard mark; of a bonded head as it is. */
function readingsOf(
  head: HeadOnRecord["head"],
  model: HeadModel,
  sleeves: readonly SleeveModel[],
): Pick<FoundHead, "squaredLoftDeg" | "soledFaceDeg" | "seatedLieDeg"> {
  const bare = {
    soledLoftDeg: degrees(head.soledLoftDeg),
    soledFaceDeg: degrees(head.soledFaceDeg),
    designLieDeg: degrees(head.designLieDeg),
    hand: head.hand,
  };
  const sleeve = sleeves.find(({ family }) => family === model.sleeveFamily);
  const attitude =
    model.sleeveFamily === null
      ? bondedAttitude(bare)
      : sleeve === undefined
        ? undefined
        : sleeveChart(bare, sleeve).find(({ standard }) => standard)?.attitude;
  const { squaredLoftDeg = null, soledFaceDeg = null, seatedLieDeg = null } = attitude ?? {};
  return { squaredLoftDeg, soledFaceDeg, seatedLieDeg };
}

/** How far a head is from each thing asked, the gravest first: 0 is a hit, 1 a miss, of a bound by how much. */
function missesOf({ head, model, place }: HeadOnRecord, found: FoundHead, question: HeadQuestion): readonly number[] {
  const { family, club, hand, grind, stampedLoftDeg, serial } = question;
  const miss = (isAsked: boolean, fits: boolean): number => (isAsked && !fits ? 1 : 0);
  const inClub = club !== null && head.stampedLoftDeg >= club.stampedMinDeg && head.stampedLoftDeg <= club.stampedMaxDeg;
  return [
    miss(serial !== null, head.serial === serial),
    miss(hand !== null, head.hand === hand),
    miss(family !== null || club !== null, found.family === (club?.family ?? family)),
    miss(leavesOutPutters(question), found.family !== "putter"),
    miss(question.place !== null, place?.id === question.place?.id),
    modelMiss(question, model.id, found.family),
    miss(grind !== null, found.grind === grind),
    miss(club !== null, inClub),
    stampedLoftDeg === null ? 0 : Math.abs(head.stampedLoftDeg - stampedLoftDeg),
    question.bounds.reduce((total, bound) => total + distanceOf(bound, found[bound.quantity]), 0),
  ];
}

/** Another model of the same family is nearer than one of another. */
function modelMiss({ models }: HeadQuestion, id: Id<"partModel">, family: HeadModel["family"]): number {
  if (models === null || models.some((model) => model.id === id)) return 0;
  return models.some((model) => model.family === family) ? 1 : 2;
}

/** An end that is not included is missed by a hair. */
const HAIR = 1e-9;

function distanceOf(bound: Bound, value: number | null): number {
  if (value === null) return Number.MAX_VALUE;
  if (bound.kind === "near") return 0;
  const { min, max, includesEnds } = bound;
  const below = min === null ? 0 : Math.max(0, min - value, !includesEnds && value === min ? HAIR : 0);
  const above = max === null ? 0 : Math.max(0, value - max, !includesEnds && value === max ? HAIR : 0);
  return below + above;
}

/** Rising by the quantity asked, unknown last; nearest first where one value was asked. */
function rankOf(bound: Bound | undefined, quantity: AskedQuantity): (head: FoundHead) => number {
  return (head) => {
    const value = head[quantity] ?? Number.MAX_VALUE;
    return bound?.kind === "near" ? Math.abs(value - bound.value) : value;
  };
}

const bySerial = (one: FoundHead, other: FoundHead): number => (one.serial < other.serial ? -1 : 1);

function nearestOf(scored: readonly { readonly found: FoundHead; readonly misses: readonly number[] }[]): readonly FoundHead[] {
  const compare = (one: readonly number[], other: readonly number[]): number => {
    const at = one.findIndex((miss, index) => miss !== other[index]);
    return at === -1 ? 0 : (one[at] ?? 0) - (other[at] ?? 0);
  };
  return [...scored]
    .sort((one, other) => compare(one.misses, other.misses) || bySerial(one.found, other.found))
    .slice(0, MOST_NEAREST)
    .map(({ found }) => found);
}
