import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown } from "./known.ts";
import { requirePlace } from "./placesOf.ts";
import type { WeekTables } from "./weekTables.ts";

type PieceRow = WeekTables["shaftPieces"]["rows"][number];
type Shaft = WeekTables["shafts"]["rows"][number]["value"];

/** Shafts prepared before, one a row: two rows alike are two shafts. */
export function shaftPiecesOf(tables: WeekTables, faults: FaultList): Pick<Week, "shaftPieces"> {
  const { shaftPieces, shafts, sleeves } = tables;
  const [shaftNames, sleeveNames] = [namesIn(shafts, "name"), namesIn(sleeves, "name")];
  const shaftsByName = new Map(shafts.rows.map(({ value }) => [value.name, value]));
  requirePlace(tables, faults, shaftPieces.rows);
  return {
    shaftPieces: shaftPieces.rows.map((row) => {
      const { tip_trim_mm, cut_length_mm, ...piece } = row.value;
      requireKnown(faults, row, "model", shaftNames, shafts.file);
      requireKnown(faults, row, "sleeve", sleeveNames, sleeves.file);
      requirePrepared(faults, row);
      const shaft = shaftsByName.get(piece.model);
      if (shaft !== undefined) requireCuttable(faults, row, shaft);
      return { ...piece, tipTrimMm: tip_trim_mm, cutLengthMm: cut_length_mm };
    }),
  };
}

/** What a state says of sleeve, logo and length. */
function requirePrepared(faults: FaultList, row: PieceRow): void {
  const { state, sleeve, logo, cut_length_mm } = row.value;
  if (state === "sleeved" && sleeve === null) faults.add(row, "sleeve", "the sleeve that is bonded to it");
  if (state === "tipped" && sleeve !== null) faults.add(row, "sleeve", "nothing: with a sleeve on it is sleeved");
  if (sleeve === null && logo !== null) faults.add(row, "logo", "nothing: without a sleeve it can be bonded either way");
  if (state === "used" && cut_length_mm === null) faults.add(row, "cut_length_mm", "the length it was cut to");
}

/** No more is gone than there was. */
function requireCuttable(faults: FaultList, row: PieceRow, { tip, parallel_tip_mm, raw_length_mm }: Shaft): void {
  const { tip_trim_mm, cut_length_mm } = row.value;
  if (tip === "taper" && tip_trim_mm > 0) faults.add(row, "tip_trim_mm", "0: a taper tip is not trimmed");
  if (tip === "parallel" && tip_trim_mm > parallel_tip_mm)
    faults.add(row, "tip_trim_mm", `at most the parallel part of its tip, ${parallel_tip_mm} mm`);
  if ((cut_length_mm ?? 0) + tip_trim_mm > raw_length_mm) faults.add(row, "cut_length_mm", `no more than is left of ${raw_length_mm} mm`);
}
