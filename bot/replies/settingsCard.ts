import type { CheckTolerances, ComparedQuantity } from "../../core/bag/checkTolerances.ts";
import type { Station, WaitFloors } from "../../core/bench/benchTypes.ts";
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
  | (AnySetting & { readonly of: "checking"; readonly quantity: ComparedQuantity })
  /** Waits nobody shortens, from the sheets of the shop's own products. */
  | (AnySetting & { readonly of: "wait"; readonly quantity: Exclude<keyof WaitFloors, "walkMin"> })
  /** How many clubs a station of this truck holds at once. */
  | (AnySetting & { readonly of: "station"; readonly quantity: Station });

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

const wait = (written: string, quantity: Exclude<keyof WaitFloors, "walkMin">): SettingWords => ({
  of: "wait",
  written: `waits-${written}`,
  quantity,
  unit: "min",
});
const station = (written: string, quantity: Station): SettingWords => ({ of: "station", written: `stations-${written}`, quantity, unit: "at once" });

/** Everything a lead may change, by the name it is typed with. */
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
  wait("glue", "adhesiveHandleMin"),
  wait("glue-play", "adhesivePlayMin"),
  wait("grip", "gripHandleMin"),
  wait("grip-play", "gripPlayMin"),
  station("bench", "bench"),
  station("cutter", "cutter"),
  station("bonding", "bonding"),
  station("gripping", "gripping"),
  station("loft-lie", "loftLie"),
  station("scale", "scale"),
  station("marking", "marking"),
];

/** Every setting in force at a truck. */
export interface SettingsInForce {
  readonly choosing: SelectionTolerances;
  readonly checking: CheckTolerances;
  readonly waits: WaitFloors;
  readonly stations: Readonly<Record<Station, number>>;
}

/** What a setting is now. */
export function valueInForce(setting: SettingWords, { choosing: chosen, checking: checked, waits, stations }: SettingsInForce): number {
  switch (setting.of) {
    case "choosing":
      return chosen[setting.quantity];
    case "checking":
      return checked[setting.quantity].tolerance;
    case "wait":
      return waits[setting.quantity];
    case "station":
      return stations[setting.quantity];
  }
}

const shownNumber = (value: number): string => String(Math.round(value * 1000) / 1000);
/** A tolerance lies both ways; a wait and a place do not. */
const withUnit = ({ of, unit }: SettingWords, value: number): string =>
  `${of === "choosing" || of === "checking" ? "±" : ""}${shownNumber(value)}${unit === "°" ? unit : ` ${unit}`}`;

/** All settings in force. */
export function settingsCard(inForce: SettingsInForce): Card {
  const rows = (of: SettingWords["of"]) =>
    settingWords
      .filter((setting) => setting.of === of)
      .map((setting) => line(`${setting.written} ${withUnit(setting, valueInForce(setting, inForce))}`));
  return card({
    kind: "settings",
    title: "Settings in force",
    lines: [
      line({ strong: "Choosing a head: so far off counts as one" }),
      ...rows("choosing"),
      line({ strong: "Checking a club: within it is close, past it off" }),
      ...rows("checking"),
      line({ strong: "Waits, as the sheets of your glue and grips say: to handle, to play" }),
      ...rows("wait"),
      line({ strong: "Clubs a station of this truck holds" }),
      ...rows("station"),
      line("The lead changes one: /settings choosing-loft 0.3, or default"),
    ],
    data: Object.fromEntries(settingWords.map((setting) => [`${setting.of}_${setting.quantity}`, valueInForce(setting, inForce)])),
  });
}

export const settingNotes = {
  changed: (setting: SettingWords, before: number, after: number): Reply =>
    note(
      "settings",
      `${setting.written} ${withUnit(setting, before)} > ${withUnit(setting, after)}`,
      "good",
      setting.of === "wait" ? "It counts for orders planned from now on; what is on the bench keeps its waits." : "It counts from now on.",
    ),
};

export function settingFaultNote(why: "unknown" | "lead-only" | "out-of-range", written: string): Reply {
  switch (why) {
    case "unknown":
      return note("refusal", `No setting ${written}`, "refusal", `There are: ${settingWords.map((setting) => setting.written).join(", ")}`);
    case "lead-only":
      return note("refusal", `${written}: the lead changes settings`, "refusal", "Nothing was changed.");
    case "out-of-range":
      return note(
        "refusal",
        `${written} cannot be`,
        "refusal",
        "A tolerance from 0.01 to 100 in the unit shown, a wait from 0 to 10080 minutes, a station from 0 to 9 clubs, or: default. Nothing was changed.",
      );
  }
}
