import { z } from "zod";
import { defaultCheckTolerances } from "../../core/bag/checkTolerances.ts";
import { defaultSelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import { setNumber } from "../../db/repositories/settings.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { checkTolerances, selectionTolerances, tolerancePrefixes } from "../operations/shopTolerances.ts";
import { reply } from "../replies/card.ts";
import { settingFaultNote, settingNotes, settingsCard, settingWords } from "../replies/settingsCard.ts";

/** Any tolerance lies between what no gauge can tell and what nobody would call near. */
const LEAST = 0.01;
const MOST = 100;

export const settings = defineCommand({
  name: "settings",
  summary: "The shop's tolerances: alone it lists them, with a name and a value the lead changes one",
  options: [
    { name: "name", summary: "Such as: choosing-loft, checking-swing", required: false },
    { name: "value", summary: "A number in the unit shown, or default", required: false },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ name: z.string().max(40).optional(), value: z.string().max(20).optional() }),
  run: async ({ name, value }, context) => {
    const { person, roles } = context.actor;
    const choosing = context.read(selectionTolerances);
    const checking = context.read(checkTolerances);
    if (name === undefined || value === undefined) {
      return reply(settingsCard(choosing, checking));
    }
    const known = settingWords.find(({ written }) => written === name.trim().toLowerCase().replace(/\s+/g, "-"));
    if (known === undefined) {
      return settingFaultNote("unknown", name);
    }
    if (!roles.includes("lead") || person === null) {
      return settingFaultNote("lead-only", name);
    }
    const number = value.trim().toLowerCase() === "default" ? null : Number(value.replace(",", "."));
    if (number !== null && !(number >= LEAST && number <= MOST)) {
      return settingFaultNote("out-of-range", value);
    }
    const before = known.of === "choosing" ? choosing[known.quantity] : checking[known.quantity].tolerance;
    const after = number ?? (known.of === "choosing" ? defaultSelectionTolerances[known.quantity] : defaultCheckTolerances[known.quantity].tolerance);
    return context.commit((tx) => {
      setNumber(tx, `${tolerancePrefixes[known.of]}.${known.quantity}`, number, { personId: person, at: context.now });
      return {
        reply: settingNotes.changed(known, before, after),
        changes: [{ action: "setting.change", subject: `setting:${known.of}.${known.quantity}`, before, after }],
        posts: [],
      };
    });
  },
});
