import type { CheckTolerances, ComparedQuantity } from "../../core/bag/checkTolerances.ts";
import type { SelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import type { Card, Reply } from "../chat/types.ts";
import { card, line, note } from "./card.ts";

type Chosen = Exclude<keyof SelectionTolerances, "scoreBand">;

interface AnySetting {
  /** As it is typed. */
  readonly written: string;
  readonly unit: string;
}

export type SettingWords =
  | (AnySetting & { readonly of: "choosing"; readonly quantity: Chosen })
  | (AnySetting & { readonly of: "checking"; readonly quantity: ComparedQuantity });

const choosing = (written: string, quantity: Chosen, unit: string): SettingWords => ({
  of: "choosing",
  written: `choosing-${written}`,
  quantity,
  unit,
});
const checking = (written: string, quantity: ComparedQuantity, unit: string): SettingWords => ({
  of: "checking",
  written: `checking-${written}`,
  quantity,
  unit,
});

/** Every tolerance a lead may change, by the name it is typed with. */
export const settingWords: readonly SettingWords[] = [
  choosing("loft", "squaredLoftDeg", "°"),
  choosing("face", "soledFaceDeg", "°"),
  choosing("lie", "seatedLieDeg", "°"),
  choosing("bounce", "bounceDeg", "°"),
  choosing("mass", "headMassG", "g"),
  checking("loft", "squaredLoftDeg", "°"),
  checking("face", "soledFaceDeg", "°"),
  checking("lie", "seatedLieDeg", "°"),
  checking("bounce", "bounceDeg", "°"),
  checking("length", "lengthMm", "mm"),
  checking("swing", "swingWeightPoints", "points"),
  checking("total", "totalMassG", "g"),
  checking("head", "headMassG", "g"),
  checking("grip2", "gripAt2InMm", "mm"),
  checking("grip6", "gripAt6InMm", "mm"),
  checking("frequency", "frequencyCpm", "cpm"),
];

const shownNumber = (value: number): string => String(Math.round(value * 1000) / 1000);
const withUnit = (value: number, unit: string): string => `${shownNumber(value)}${unit === "°" ? unit : ` ${unit}`}`;

/** All tolerances in force. */
export function settingsCard(chosen: SelectionTolerances, checked: CheckTolerances): Card {
  const inForce = (setting: SettingWords): number => (setting.of === "choosing" ? chosen[setting.quantity] : checked[setting.quantity].tolerance);
  const rows = (of: SettingWords["of"]) =>
    settingWords.filter((setting) => setting.of === of).map((setting) => line(`${setting.written} ±${withUnit(inForce(setting), setting.unit)}`));
  return card({
    kind: "settings",
    title: "Tolerances in force",
    lines: [
      line({ strong: "Choosing a head: so far off counts as one" }),
      ...rows("choosing"),
      line({ strong: "Checking a club: within it is close, past it off" }),
      ...rows("checking"),
      line("The lead changes one: /settings choosing-loft 0.3, or default"),
    ],
    data: Object.fromEntries(settingWords.map((setting) => [`${setting.of}_${setting.quantity}`, inForce(setting)])),
  });
}

export const settingNotes = {
  changed: ({ written, unit }: SettingWords, before: number, after: number): Reply =>
    note("settings", `${written} ±${withUnit(before, unit)} > ±${withUnit(after, unit)}`, "good", "It counts for plans and checks from now on."),
};

export function settingFaultNote(why: "unknown" | "lead-only" | "out-of-range", written: string): Reply {
  switch (why) {
    case "unknown":
      return note("refusal", `No setting ${written}`, "refusal", `There are: ${settingWords.map((setting) => setting.written).join(", ")}`);
    case "lead-only":
      return note("refusal", `${written}: the lead changes tolerances`, "refusal", "Nothing was changed.");
    case "out-of-range":
      return note(
        "refusal",
        `${written} is no tolerance`,
        "refusal",
        "A number from 0.01 to 100 in the unit shown, or: default. Nothing was changed.",
      );
  }
}
