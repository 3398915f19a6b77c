import { z } from "zod";
import { cell, cellOrBlank, clubName, handle, localTime, number, oneOf, text, whole, yesNo, zone } from "./cells.ts";

export const specVersionRow = z.object({
  player: cell(handle),
  version: cell(whole(1, 10_000)),
  valid_from: cell(localTime),
  zone: cell(zone),
  by: cell(handle),
  event: cellOrBlank(text(60)),
  where: cell(text(80)),
});

export const specClubRow = z.object({
  player: cell(handle),
  version: cell(whole(1, 10_000)),
  set: cell(oneOf(["bag", "backup"])),
  club: cell(clubName),
  outside: cell(yesNo),
  head_model: cellOrBlank(text(40)),
  head_serial: cellOrBlank(text(12)),
  stamped_loft_deg: cellOrBlank(number(-15, 70)),
  squared_loft_deg: cellOrBlank(number(-15, 70)),
  soled_face_deg: cellOrBlank(number(-6, 6)),
  seated_lie_deg: cellOrBlank(number(50, 80)),
  bounce_deg: cellOrBlank(number(-2, 25)),
  grind: cellOrBlank(text(30)),
  sleeve_model: cellOrBlank(text(40)),
  sleeve_mark: cellOrBlank(text(30)),
  length_mm: cellOrBlank(number(457.2, 1320.8)),
  swing_weight_points: cellOrBlank(number(-30, 40)),
  total_mass_g: cellOrBlank(number(200, 800)),
  head_mass_g: cellOrBlank(number(100, 600)),
  shaft_model: cellOrBlank(text(40)),
  tip_trim_mm: cellOrBlank(number(0, 200)),
  logo: cellOrBlank(oneOf(["up", "down"])),
  grip_model: cellOrBlank(text(40)),
  rib: cellOrBlank(yesNo),
  wraps: cellOrBlank(whole(0, 12)),
  stamp: cellOrBlank(text(20)),
  note: cellOrBlank(text(200)),
  measured_at: cellOrBlank(localTime),
  gauge: cellOrBlank(text(40)),
});
