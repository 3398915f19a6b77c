import type { Id } from "../../core/kinds.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { type PartLying, type PieceLying, partsLying, piecesLying } from "../../db/repositories/stockCount.ts";
import type { Reader } from "../../db/write.ts";
import type { PartQuestion } from "../boundary/stock/findQuestion.ts";
import { type KnownPart, type KnownPlace, shownName } from "../boundary/stock/stockKnown.ts";

interface Lying {
  readonly place: string;
  readonly truck: string | null;
  readonly here: boolean;
}

/** So many of a part in a place, how many of them orders hold. */
export interface FoundPart extends Lying {
  readonly name: string;
  readonly count: number;
  readonly heldCount: number;
}

/** A prepared shaft: no longer raw, one piece by itself. */
export interface FoundPiece extends Lying {
  readonly name: string;
  readonly state: "tipped" | "sleeved" | "used";
  readonly tipTrimMm: number;
  readonly sleeve: string | null;
  readonly logo: "up" | "down" | null;
  readonly cutLengthMm: number | null;
  readonly orderNumber: number | null;
}

export interface FoundParts {
  /** This truck first, then elsewhere. */
  readonly parts: readonly FoundPart[];
  readonly pieces: readonly FoundPiece[];
  /** The models asked for that lie nowhere. */
  readonly missing: readonly string[];
  /** Models of the same kind that do, when none asked for lies anywhere. */
  readonly nearest: readonly string[];
}

const MOST_NEAREST = 3;

/** Finds counted parts and prepared shafts of some models: how many where, in whose bin. */
export function findParts(
  reader: Reader,
  { models, place }: PartQuestion,
  known: { readonly places: readonly KnownPlace[]; readonly parts: readonly KnownPart[]; readonly truckId: Id<"truck"> | null },
): FoundParts {
  const shownPlaces = new Map(known.places.map((row) => [row.id, row.shown]));
  const asked = new Map(models.map((model) => [model.id, shownName(model)]));
  const lyingAt = (row: Pick<PartLying | PieceLying, "place" | "truckName">): Lying => {
    const here = row.place.truckId !== null && row.place.truckId === known.truckId;
    return { place: shownPlaces.get(row.place.id) ?? row.place.label, truck: here ? null : row.truckName, here };
  };
  const isAsked = (row: PartLying | PieceLying): boolean => asked.has(row.model.id) && (place === null || row.place.id === place.id);
  const all = partsLying(reader);
  const parts = all.filter(isAsked).map((row) => ({
    name: asked.get(row.model.id) ?? row.model.name,
    count: row.lying,
    heldCount: row.held,
    ...lyingAt(row),
  }));
  const sleeves = new Map(
    modelsOf<{ readonly id: Id<"partModel">; readonly name: string }>(reader, "sleeve").map((row) => [row.id, row.restrictedCode ?? row.name]),
  );
  const pieces = piecesLying(reader)
    .filter(isAsked)
    .map((row) => ({
      name: asked.get(row.model.id) ?? row.model.name,
      state: row.piece.state,
      tipTrimMm: row.piece.tipTrimMm,
      sleeve: row.piece.sleeveModelId === null ? null : (sleeves.get(row.piece.sleeveModelId) ?? null),
      logo: row.piece.logo,
      cutLengthMm: row.piece.cutLengthMm,
      orderNumber: row.orderNumber,
      ...lyingAt(row),
    }));
  const names = [...asked.values()];
  const hereFirst = (one: Lying, other: Lying): number => Number(other.here) - Number(one.here);
  const found = new Set([...parts, ...pieces].map(({ name }) => name));
  return {
    parts: [...parts].sort((one, other) => hereFirst(one, other) || names.indexOf(one.name) - names.indexOf(other.name)),
    pieces: [...pieces].sort(hereFirst),
    missing: names.filter((name) => !found.has(name)),
    nearest: found.size > 0 ? [] : nearestOf(models, known.parts, new Set(all.map(({ model }) => model.id))),
  };
}

/** Of the same kind, most words in common first. */
function nearestOf(models: readonly KnownPart[], parts: readonly KnownPart[], lying: ReadonlySet<Id<"partModel">>): readonly string[] {
  const wanted = new Set(models.flatMap((model) => shownName(model).split(" ")));
  const kinds = new Set(models.map(({ kind }) => kind));
  const common = (part: KnownPart): number =>
    shownName(part)
      .split(" ")
      .filter((word) => wanted.has(word)).length;
  return parts
    .filter((part) => kinds.has(part.kind) && lying.has(part.id))
    .sort((one, other) => common(other) - common(one))
    .slice(0, MOST_NEAREST)
    .map(shownName);
}
