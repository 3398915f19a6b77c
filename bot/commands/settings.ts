import { z } from "zod";
import { touchBench } from "../../db/repositories/orders.ts";
import { setNumber } from "../../db/repositories/settings.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { settingsInForce } from "../operations/settingsInForce.ts";
import { tolerancePrefixes } from "../operations/shopTolerances.ts";
import { reply } from "../replies/card.ts";
import { type SettingWords, settingFaultNote, settingNotes, settingsCard, settingWords, valueInForce } from "../replies/settingsCard.ts";

/** What can be: a tolerance between what no gauge can tell and what nobody would call near, whole places, waits of a week. */
const limits: Readonly<Record<SettingWords["of"], (value: number) => boolean>> = {
  choosing: (value) => value >= 0.01 && value <= 100,
  checking: (value) => value >= 0.01 && value <= 100,
  wait: (value) => value >= 0 && value <= 10_080,
  station: (value) => Number.isInteger(value) && value >= 0 && value <= 9,
};

/** Where a setting is kept; stations are a truck's own. */
function keptAs({ of, quantity }: SettingWords, truck: number | null): string {
  switch (of) {
    case "choosing":
    case "checking":
      return `${tolerancePrefixes[of]}.${quantity}`;
    case "wait":
      return `floor.${quantity}`;
    case "station":
      return `stations.${truck ?? ""}.${quantity}`;
  }
}

/** `choosing-loft 0.3` in one is a name and a value. */
function asTyped({ name, value }: { readonly name?: string | undefined; readonly value?: string | undefined }) {
  const words = name?.trim().split(/\s+/) ?? [];
  return value === undefined && words.length > 1 ? { name: words.slice(0, -1).join("-"), value: words.at(-1) } : { name, value };
}

export const settings = defineCommand({
  name: "settings",
  summary: "Tolerances, waits, stations: alone it lists them, with a name and a value the lead changes one",
  options: [
    {
      name: "name",
      summary: "Such as: choosing-loft, checking-swing, waits-glue",
      required: false,
      oneOf: settingWords.map(({ written }) => written),
    },
    { name: "value", summary: "A number in the unit shown, or default", required: false },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({ name: z.string().max(40).optional(), value: z.string().max(20).optional() }),
  run: async (typed, context) => {
    const { name, value } = asTyped(typed);
    const { person, roles, truck } = context.actor;
    const before = context.read((reader) => settingsInForce(reader, truck));
    if (name === undefined || value === undefined) {
      return reply(settingsCard(before));
    }
    const known = settingWords.find(({ written }) => written === name.trim().toLowerCase().replace(/\s+/g, "-"));
    if (known === undefined || (known.of === "station" && truck === null)) {
      return settingFaultNote("unknown", name);
    }
    if (!roles.includes("lead") || person === null) {
      return settingFaultNote("lead-only", name);
    }
    const number = value.trim().toLowerCase() === "default" ? null : Number(value.replace(",", "."));
    if (number !== null && (value.trim() === "" || !limits[known.of](number))) {
      return settingFaultNote("out-of-range", value);
    }
    return context.commit((tx) => {
      setNumber(tx, keptAs(known, truck), number, { personId: person, at: context.now });
      if (known.of === "station" && truck !== null) {
        touchBench(tx, truck);
      }
      const [was, is] = [before, settingsInForce(tx, truck)].map((inForce) => valueInForce(known, inForce));
      return {
        reply: settingNotes.changed(known, was ?? 0, is ?? 0),
        changes: [{ action: "setting.change", subject: `setting:${known.of}.${known.quantity}`, before: was ?? null, after: is ?? null }],
        posts: [],
      };
    });
  },
});
