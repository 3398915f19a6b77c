import { z } from "zod";
import { readSkills, skillNames } from "../readSkills.ts";
import { cell, cellOrBlank, cellOrNoColumn, handle, oneOf, someOf, text, texts, whole, zone } from "./cells.ts";

const skillList = {
  accepted: `none, or of ${skillNames.join(", ")}, parted by semicolons`,
  read: (written: string) => {
    const read = readSkills(written);
    return read.kind === "skills" ? read.skills : undefined;
  },
};

export const personRow = z.object({
  handle: cell(handle),
  name: cell(text()),
  roles: cell(someOf(["rep", "technician", "lead", "viewer"])),
  zone: cell(zone),
  length_unit: cell(oneOf(["in", "mm"])),
  truck: cellOrBlank(text(30)),
  skills: cellOrNoColumn(skillList),
});

export const truckRow = z.object({ name: cell(text(30)) });

export const channelRow = z.object({
  name: cell(handle),
  purpose: cell(oneOf(["orders", "bench", "week", "general", "lead"])),
  truck: cellOrBlank(text(30)),
});

export const playerRow = z.object({
  handle: cell(handle),
  name: cell(text()),
  hand: cell(oneOf(["right", "left"])),
  region: cell(text(40)),
  aliases: cell(texts),
  restricted_code: cellOrBlank(handle),
  balls: cellOrBlank(whole(0, 500)),
  hats: cellOrBlank(whole(0, 50)),
  gloves: cellOrBlank(whole(0, 50)),
  hat_size: cell(text(10)),
  glove_size: cell(text(10)),
  note: cellOrBlank(text(200)),
});
