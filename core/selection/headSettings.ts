import type { MeasuredHead, SleeveModel } from "../buildSheet/parts.ts";
import type { Target } from "../buildSheet/plan.ts";
import { attitudeOf, bondedAttitude } from "../head/attitudeOf.ts";
import { rowOfMark, sleeveSettings } from "../head/sleeveSettings.ts";
import { bestBend, type LeftHead } from "./bestBend.ts";
import type { SetHead } from "./headDeviations.ts";
import { type MassReached, type MassWish, massReached } from "./massReached.ts";
import type { SelectionTolerances } from "./selectionTolerances.ts";

/** How the heads of one question may be set. */
export interface SettingQuestion {
  readonly target: Target;
  readonly sleeves: readonly SleeveModel[];
  readonly tolerances: SelectionTolerances;
  /** The mark that wins among equals; left out, each sleeve's standard mark. */
  readonly preferredMark?: string | null;
  /** The head mass that swing weight needs, with the weights in stock; null where nothing is wished. */
  readonly massWish?: (head: MeasuredHead, sleeve: SleeveModel | null) => MassWish | null;
  /** Whether a technician with the skill for bonded heads is at hand; left out, none is. */
  readonly skilledTechnician?: boolean;
}

/** A head as it would be left, with its sleeve at a printed mark or bent. */
export interface Setting extends SetHead, LeftHead {
  readonly bounceDeg: LeftHead["bounceDeg"];
  readonly sleeve: SleeveModel | null;
  readonly mark: string | null;
  readonly atPreferredMark: boolean;
}

function massOf(head: MeasuredHead, sleeve: SleeveModel | null, question: SettingQuestion): MassReached | null {
  const wish = question.massWish?.(head, sleeve) ?? null;
  return wish === null ? null : massReached(head.massG, wish, question.tolerances.headMassG);
}

function bondedSetting(head: MeasuredHead, question: SettingQuestion): Setting {
  const { target, tolerances, skilledTechnician = false } = question;
  const wish = { ...target, squaredLoftDeg: target.squaredLoftDeg ?? target.stampedLoftDeg };
  const left = bestBend(head, bondedAttitude(head), wish, { tolerances, skilledTechnician });
  const { squaredLoftDeg } = left.attitude;
  return { ...left, sleeve: null, mark: null, standardLoftDeg: squaredLoftDeg, atPreferredMark: true, mass: massOf(head, null, question) };
}

/** With nothing wished that a sleeve could change, only the preferred mark. */
const isMarkWished = ({ sleeveMark, squaredLoftDeg, soledFaceDeg, seatedLieDeg }: Target) =>
  sleeveMark !== null || squaredLoftDeg !== null || soledFaceDeg !== null || seatedLieDeg !== null;

/** The marks of one sleeve that are tried, its standard among them for the loft it gives. */
function sleeveWays(sleeve: SleeveModel, question: SettingQuestion) {
  const { target } = question;
  const settings = sleeveSettings(sleeve);
  const standard = rowOfMark(settings, sleeve.standardMark, "standardMark");
  const preferredMark = question.preferredMark ?? sleeve.standardMark;
  const onlyMark = isMarkWished(target) ? target.sleeveMark : preferredMark;
  return { sleeve, standard, preferredMark, tried: settings.filter(({ mark }) => onlyMark === null || mark === onlyMark) };
}

type SleeveWays = ReturnType<typeof sleeveWays>;

function sleevedSettings(head: MeasuredHead, { sleeve, standard, preferredMark, tried }: SleeveWays, question: SettingQuestion): readonly Setting[] {
  const mass = massOf(head, sleeve, question);
  const standardLoftDeg = attitudeOf(head, standard.tilt).squaredLoftDeg;
  return tried.map(({ mark, tilt }) => ({
    sleeve,
    mark,
    attitude: attitudeOf(head, tilt),
    standardLoftDeg,
    bounceDeg: head.bounceDeg,
    bend: null,
    bendWarned: false,
    atPreferredMark: mark === preferredMark,
    mass,
  }));
}

/** Every way a head may be set: its sleeves at their marks, or bonded and bent. The sleeves are looked through once. */
export function headSettings(question: SettingQuestion): (head: MeasuredHead) => readonly Setting[] {
  const ways = new Map<string, readonly SleeveWays[]>();
  const waysOf = (family: string) => {
    const known = ways.get(family) ?? question.sleeves.filter((sleeve) => sleeve.family === family).map((sleeve) => sleeveWays(sleeve, question));
    ways.set(family, known);
    return known;
  };
  return (head) => {
    const { sleeveFamily } = head.model;
    if (sleeveFamily !== null) {
      return waysOf(sleeveFamily).flatMap((one) => sleevedSettings(head, one, question));
    }
    return question.target.sleeveMark === null ? [bondedSetting(head, question)] : [];
  };
}
