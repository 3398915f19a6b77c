import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireKnown, requireUnique } from "./known.ts";
import type { WeekTables } from "./weekTables.ts";

/** The models of parts: heads, shafts, grips and weights. Sleeves have marks of their own and are read beside. */
export function modelsOf(tables: WeekTables, faults: FaultList): Pick<Week, "headModels" | "shafts" | "grips" | "weights"> {
  const { grips, weights } = tables;
  requireUnique(faults, grips.rows, ["name"]);
  requireUnique(faults, weights.rows, ["name"]);
  return {
    headModels: headModelsOf(tables, faults),
    shafts: shaftsOf(tables, faults),
    grips: grips.rows.map(({ value }) => ({
      name: value.name,
      massG: value.mass_g,
      centreFromCapMm: value.centre_from_cap_mm,
      capMm: value.cap_mm,
      coreMm: value.core_mm,
      rib: value.rib,
    })),
    weights: weights.rows.map(({ value }) => ({ name: value.name, massG: value.mass_g })),
  };
}

function headModelsOf({ headModels, sleeves }: WeekTables, faults: FaultList): Week["headModels"] {
  requireUnique(faults, headModels.rows, ["name"]);
  requireUnique(
    faults,
    headModels.rows.filter(({ value }) => value.restricted_code !== null),
    ["restricted_code"],
  );
  const families = namesIn(sleeves, "family");
  for (const row of headModels.rows) requireKnown(faults, row, "sleeve_family", families, sleeves.file);
  return headModels.rows.map(({ value }) => ({
    name: value.name,
    family: value.family,
    sleeveFamily: value.sleeve_family,
    boreToGroundMm: value.bore_to_ground_mm,
    centreAboveGroundMm: value.centre_above_ground_mm,
    grind: value.grind,
    listedForPlay: value.listed_for_play,
    restrictedCode: value.restricted_code,
    material: value.material,
    construction: value.construction,
    makerBendLimitDeg: value.maker_bend_limit_deg,
  }));
}

function shaftsOf({ shafts }: WeekTables, faults: FaultList): Week["shafts"] {
  requireUnique(faults, shafts.rows, ["name"]);
  for (const row of shafts.rows) {
    const { raw_length_mm: length, balance_from_tip_mm: balance, parallel_tip_mm: parallel, tip, tip_diameter_mm, butt_diameter_mm } = row.value;
    if (balance <= length / 3 || balance >= (2 * length) / 3) faults.add(row, "balance_from_tip_mm", "a point in the middle third of the raw length");
    if (tip === "parallel" && parallel >= length) faults.add(row, "parallel_tip_mm", "less than the raw length");
    if (butt_diameter_mm <= tip_diameter_mm) faults.add(row, "butt_diameter_mm", "more than the tip's diameter");
  }
  return shafts.rows.map(({ value }) => ({
    name: value.name,
    flex: value.flex,
    forFamilies: value.for_families,
    tip: value.tip,
    tipDiameterMm: value.tip_diameter_mm,
    parallelTipMm: value.parallel_tip_mm,
    buttDiameterMm: value.butt_diameter_mm,
    rawLengthMm: value.raw_length_mm,
    rawMassG: value.raw_mass_g,
    balanceFromTipMm: value.balance_from_tip_mm,
    material: value.material,
    frequencyCpm: value.frequency_cpm,
  }));
}
