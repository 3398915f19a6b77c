import type { CheckRow } from "../../../core/bag/checkRow.ts";
import { type ComparedQuantity, comparedQuantities } from "../../../core/bag/checkTolerances.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { Json } from "../../chat/types.ts";
import type { NearHead } from "../../flows/match/nearestHeads.ts";
import type { RankedFinished } from "./matchTypes.ts";

type Data = { readonly [key: string]: Json };

const numbersOf = (club: SpecClub): Data => ({
  ...Object.fromEntries(comparedQuantities.map((quantity) => [quantity, club[quantity] ?? null])),
  measuredAt: club.measuredAt,
});

const deltasOf = (rows: readonly CheckRow<ComparedQuantity>[]): Data =>
  Object.fromEntries(comparedQuantities.map((quantity) => [quantity, rows.find((row) => row.quantity === quantity)?.delta ?? null]));

export const gamerData = (gamer: SpecClub): Data => numbersOf(gamer);

/** A finished club unrounded: deltas are it less the gamer, null is unknown on one side. */
export function finishedData({ twin, comparison, changes, score, unknownCount }: RankedFinished): Data {
  const { where } = twin;
  return {
    club: twin.club.club,
    where: where.kind,
    place: where.kind === "drawer" ? where.place : null,
    truck: where.kind === "out" ? null : where.truck,
    orderNumber: where.kind === "drawer" ? null : where.order,
    onTest: twin.onTest,
    ...numbersOf(twin.club),
    overall: comparison.overall,
    deltas: deltasOf(comparison.rows),
    differing: [...comparison.differing],
    unknown: [...comparison.unknown],
    changes: [...changes],
    scoreNumber: score,
    unknownCount,
  };
}

/** A bare head at its mark, unrounded. */
export function headData({ choice, addedG, rows }: NearHead): Data {
  const { head, mark, attitude, bend, bounceDeg } = choice;
  return {
    serial: head.serial,
    model: head.model.name,
    place: head.place,
    here: head.here,
    mark,
    stampedLoftDeg: head.stampedLoftDeg,
    squaredLoftDeg: attitude.squaredLoftDeg,
    soledFaceDeg: attitude.soledFaceDeg,
    seatedLieDeg: attitude.seatedLieDeg,
    bounceDeg,
    loftBendDeg: bend?.loftChangeDeg ?? null,
    lieBendDeg: bend?.lieChangeDeg ?? null,
    headMassG: head.massG,
    screwMassG: addedG,
    deltas: deltasOf(rows),
  };
}
