import { z } from "zod";
import { orderKinds } from "../../../core/kinds.ts";
import { cell, clubName, handle, localDate, localTime, oneOf, text, whole, yesNo, zone } from "./cells.ts";

export const eventRow = z.object({
  name: cell(text(60)),
  course: cell(text(60)),
  zone: cell(zone),
  monday: cell(localDate),
  first_practice_round: cell(localDate),
  walk_min: cell(whole(0, 60)),
  keeps_list_for_play: cell(yesNo),
});

export const eventTruckRow = z.object({ event: cell(text(60)), truck: cell(text(30)), arrives_at: cell(localTime), roll_out_at: cell(localTime) });

export const openingRow = z.object({ event: cell(text(60)), truck: cell(text(30)), opens_at: cell(localTime), closes_at: cell(localTime) });

export const fieldRow = z.object({ event: cell(text(60)), player: cell(handle) });

export const teeTimeRow = z.object({
  event: cell(text(60)),
  player: cell(handle),
  kind: cell(oneOf(["range", "practice", "round"])),
  at: cell(localTime),
});

export const winRow = z.object({ player: cell(handle), event: cell(text(60)), won_on: cell(localDate) });

export const markingRow = z.object({ player: cell(handle), club: cell(clubName), text: cell(text(20)), win: cell(yesNo) });

export const orderRow = z.object({
  event: cell(text(60)),
  at: cell(localTime),
  channel: cell(handle),
  by: cell(handle),
  text: cell(text(500)),
  kind: cell(oneOf(orderKinds)),
  progress: cell(oneOf(["draft", "confirmed", "started", "gluedOn", "finalCheck"])),
});
