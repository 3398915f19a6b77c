import { and, eq, isNull } from "drizzle-orm";
import type { GripModel, MeasuredHead, PartsInReach, ShaftModel, SleeveModel, Stocked, WeightModel } from "../../core/buildSheet/parts.ts";
import { truck } from "../schema/people.ts";
import { head, partModel, place, reservation } from "../schema/stock.ts";
import type { Reader } from "../write.ts";
import { bendsOfHeads, measuredHead } from "./heads.ts";
import { counting } from "./holds.ts";
import { factsOf, modelsOf, type PartKind } from "./partModels.ts";
import { isOthers, placeWords, type Reach } from "./reach.ts";
import { piecesInReach } from "./shaftPieces.ts";
import { partsLying } from "./stockCount.ts";

function headsInReach(reader: Reader, { truckId, playerId, pastOrders }: Reach): readonly MeasuredHead[] {
  const bends = bendsOfHeads(reader);
  return reader
    .select({ head, model: partModel, place, truckName: truck.name })
    .from(head)
    .innerJoin(partModel, eq(partModel.id, head.modelId))
    .innerJoin(place, eq(place.id, head.placeId))
    .leftJoin(truck, eq(truck.id, place.truckId))
    .leftJoin(reservation, and(eq(reservation.headId, head.id), counting(pastOrders)))
    .where(and(isNull(head.retiredAt), isNull(reservation.id)))
    .all()
    .map((row) => ({
      ...measuredHead(row.head, row.model, {
        place: placeWords(row, truckId),
        here: row.place.truckId === truckId && !isOthers(row.place, playerId),
      }),
      bends: bends.get(row.head.id) ?? [],
    }));
}

/**
 * Reads the parts a truck can build with now: heads no open sheet holds, counted parts less what is held, prepared
 * shafts; and what lies elsewhere, each with its place.
 *
 * A player's bin is in reach for that player alone.
 *
 * @param reach - the truck that builds, whose club it is, and the orders whose own holds do not count
 */
export function partsInReach(reader: Reader, reach: Reach): PartsInReach {
  const { truckId, playerId, pastOrders } = reach;
  const all = partsLying(reader, pastOrders).filter(({ place: at, lying, held }) => lying > held && !isOthers(at, playerId));
  const of = <M>(kind: PartKind, here: boolean): readonly Stocked<M>[] =>
    all
      .filter((row) => row.model.kind === kind && (row.place.truckId === truckId) === here)
      .map((row) => ({
        model: factsOf<M>(row.model),
        place: placeWords(row, truckId),
        placeId: row.place.id,
        inPlayersBin: row.place.kind === "playerBin",
        free: row.lying - row.held,
      }));
  return {
    heads: headsInReach(reader, reach),
    sleeves: of<SleeveModel>("sleeve", true),
    shafts: of<ShaftModel>("shaft", true),
    grips: of<GripModel>("grip", true),
    weights: of<WeightModel>("weight", true),
    pieces: piecesInReach(reader, reach),
    elsewhere: {
      sleeves: of<SleeveModel>("sleeve", false),
      shafts: of<ShaftModel>("shaft", false),
      grips: of<GripModel>("grip", false),
    },
    known: { shafts: modelsOf<ShaftModel>(reader, "shaft"), grips: modelsOf<GripModel>(reader, "grip") },
  };
}
