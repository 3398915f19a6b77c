import { z } from "zod";
import { headConstructions, headMaterials } from "../../../core/head/bendLimits.ts";
import { clubFamilies } from "../../../core/kinds.ts";
import type { CyclesPerMinute, Degrees, Grams, Millimetres } from "../../../core/quantity/units.ts";
import { cell, cellOrBlank, cellOrNoColumn, handle, localTime, number, oneOf, someOf, text, whole, yesNo, zone } from "./cells.ts";

export const headModelRow = z.object({
  name: cell(text(40)),
  family: cell(oneOf(clubFamilies)),
  sleeve_family: cellOrBlank(text(40)),
  bore_to_ground_mm: cell(number<Millimetres>(0, 80)),
  centre_above_ground_mm: cell(number<Millimetres>(0, 60)),
  grind: cellOrBlank(text(30)),
  listed_for_play: cellOrBlank(yesNo),
  restricted_code: cellOrBlank(handle),
  material: cellOrNoColumn(oneOf(headMaterials)),
  construction: cellOrNoColumn(oneOf(headConstructions)),
  maker_bend_limit_deg: cellOrNoColumn(number<Degrees>(0, 20)),
});

export const sleeveRow = z.object({
  name: cell(text(40)),
  family: cell(text(40)),
  tilt_deg: cell(number<Degrees>(0, 4)),
  mass_g: cell(number<Grams>(1, 30)),
});

export const sleeveMarkRow = z.object({
  sleeve: cell(text(40)),
  mark: cell(text(30)),
  clock_deg: cell(number<Degrees>(0, 359.99)),
  standard: cell(yesNo),
});

export const shaftRow = z.object({
  name: cell(text(40)),
  flex: cell(oneOf(["R", "S", "X"])),
  for_families: cell(someOf(clubFamilies)),
  tip: cell(oneOf(["parallel", "taper"])),
  tip_diameter_mm: cell(number<Millimetres>(6, 16)),
  parallel_tip_mm: cell(number<Millimetres>(0, 400)),
  butt_diameter_mm: cell(number<Millimetres>(10, 25)),
  raw_length_mm: cell(number<Millimetres>(500, 1400)),
  raw_mass_g: cell(number<Grams>(20, 200)),
  balance_from_tip_mm: cell(number<Millimetres>(200, 900)),
  material: cell(oneOf(["graphite", "steel"])),
  frequency_cpm: cellOrNoColumn(number<CyclesPerMinute>(50, 600)),
});

export const shaftPieceRow = z.object({
  model: cell(text(40)),
  state: cell(oneOf(["tipped", "sleeved", "used"])),
  tip_trim_mm: cell(number<Millimetres>(0, 200)),
  sleeve: cellOrBlank(text(40)),
  logo: cellOrBlank(oneOf(["up", "down"])),
  cut_length_mm: cellOrBlank(number<Millimetres>(300, 1400)),
  place: cell(text(40)),
  truck: cellOrBlank(text(30)),
});

export const gripRow = z.object({
  name: cell(text(40)),
  mass_g: cell(number<Grams>(10, 200)),
  centre_from_cap_mm: cell(number<Millimetres>(50, 250)),
  cap_mm: cell(number<Millimetres>(0, 15)),
  core_mm: cell(number<Millimetres>(10, 25)),
  rib: cell(yesNo),
});

export const weightRow = z.object({ name: cell(text(40)), mass_g: cell(number<Grams>(0.1, 50)) });

export const headRow = z.object({
  serial: cell({ accepted: "a serial of 1 to 12 letters or digits", read: (written) => (/^[A-Za-z0-9]{1,12}$/.test(written) ? written : undefined) }),
  model: cell(text(40)),
  hand: cell(oneOf(["right", "left"])),
  stamped_loft_deg: cell(number<Degrees>(-15, 70)),
  soled_loft_deg: cell(number<Degrees>(-15, 70)),
  design_lie_deg: cell(number<Degrees>(50, 80)),
  soled_face_deg: cell(number<Degrees>(-6, 6)),
  bounce_deg: cellOrBlank(number<Degrees>(-2, 25)),
  mass_g: cell(number<Grams>(100, 600)),
  measured_at: cell(localTime),
  zone: cell(zone),
  place: cell(text(40)),
  truck: cellOrBlank(text(30)),
});

export const headBendRow = z.object({
  serial: cell(text(12)),
  loft_change_deg: cell(number<Degrees>(-10, 10)),
  lie_change_deg: cell(number<Degrees>(-10, 10)),
  bent_at: cell(localTime),
  zone: cell(zone),
  by: cell(handle),
});

export const goodsRow = z.object({ name: cell(text(40)) });

export const placeRow = z.object({
  label: cell(text(40)),
  kind: cell(oneOf(["drawer", "mainRack", "playerBin", "homeBase", "float"])),
  truck: cellOrBlank(text(30)),
  player: cellOrBlank(handle),
});

export const stockRow = z.object({
  kind: cell(oneOf(["shaft", "grip", "sleeve", "weight", "goods"])),
  model: cell(text(40)),
  place: cell(text(40)),
  truck: cellOrBlank(text(30)),
  quantity: cell(whole(0, 100_000)),
});
