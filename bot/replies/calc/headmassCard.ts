import type { lengthChangeForHeadMass } from "../../../core/club/lengthChangeForHeadMass.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Json, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { inertia, lengthWords, signed } from "./calcNumbers.ts";

type LengthChange = ReturnType<typeof lengthChangeForHeadMass>;

/** Head masses for one aim: at the length as it is, and at the changed one when a change was asked. */
export interface HeadmassAim {
  readonly kept: "swing-weight" | "inertia";
  /** False for what the club has now, which is to be kept. */
  readonly isWished: boolean;
  /** The value aimed at: points or kg·cm². */
  readonly aim: number;
  readonly headMassG: number;
  readonly pointHeadMassG: number | null;
  readonly pointChangedHeadMassG: number | null;
  readonly changedHeadMassG: number | null;
  readonly lengthChange: LengthChange | null;
}

export interface HeadmassFacts {
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly unit: "in" | "mm";
  /** The head as it is; null when its mass was not told. */
  readonly presentG: number | null;
  readonly lengthChangeMm: number | null;
  readonly newHeadG: number | null;
  readonly aims: readonly HeadmassAim[];
  /** What the gauge last said of the club, and how much the head has to change from there; null without both. */
  readonly fromGauge: { readonly swingWeightPoints: number; readonly headChangeG: number } | null;
}

const changeWords = (mm: number, unit: "in" | "mm"): string => `${mm > 0 ? "+" : ""}${lengthWords(mm, unit)}`;
const aimWords = ({ kept, aim }: HeadmassAim): string => (kept === "swing-weight" ? shown.swing(aim) : inertia(aim));
const against = (massG: number, presentG: number | null): string => (presentG === null ? "" : ` (${signed(massG - presentG)} g)`);
const massWords = (massG: number, presentG: number | null): string =>
  massG > 0 ? `head ${shown.mass(massG)}${against(massG, presentG)}` : "no head is light enough";

function aimLines(aim: HeadmassAim, facts: HeadmassFacts): readonly Line[] {
  const points = aim.pointHeadMassG === null ? "" : `; ${shown.mass(aim.pointHeadMassG)} with the parts as points`;
  const wished = line({ strong: `${aimWords(aim)}: ` }, `${massWords(aim.headMassG, facts.presentG)}${points}`);
  const { lengthChange } = aim;
  return [
    ...(aim.isWished ? [wished] : []),
    ...(aim.changedHeadMassG === null || facts.lengthChangeMm === null
      ? []
      : [line(`${changeWords(facts.lengthChangeMm, facts.unit)} at the same ${aimWords(aim)}: ${massWords(aim.changedHeadMassG, facts.presentG)}`)]),
    ...(lengthChange === null || facts.newHeadG === null
      ? []
      : [line(`Head ${shown.mass(facts.newHeadG)} at the same ${aimWords(aim)}: ${newLength(lengthChange, facts.unit)}`)]),
  ];
}

const newLength = (change: LengthChange, unit: "in" | "mm"): string =>
  change.kind === "found"
    ? `${changeWords(change.lengthChangeMm, unit)} of length`
    : `no length within 3 in does; heads of ${shown.mass(change.lightestHeadG)} to ${shown.mass(change.heaviestHeadG)} would`;

const gaugeLine = ({ fromGauge }: HeadmassFacts): readonly Line[] =>
  fromGauge === null ? [] : [line(`From ${shown.swing(fromGauge.swingWeightPoints)} on the gauge: ${signed(fromGauge.headChangeG)} g`)];

const dataOf = (aims: readonly HeadmassAim[]): Json =>
  aims.map(({ kept, aim, headMassG, pointHeadMassG, pointChangedHeadMassG, changedHeadMassG, lengthChange }) => ({
    kept,
    ...(kept === "swing-weight" ? { swingWeightPoints: aim } : { inertiaKgCm2: aim }),
    headMassG,
    pointHeadMassG,
    pointChangedHeadMassG,
    changedHeadMassG,
    lengthChangeMm: lengthChange?.kind === "found" ? lengthChange.lengthChangeMm : null,
  }));

/** What the head must weigh for a swing weight or an inertia, and when the length changes. */
export function headmassReply(facts: HeadmassFacts): Reply {
  const [first] = facts.aims;
  return reply(
    calcCard({
      view: "headmass",
      title: `${facts.named === null ? "Head mass" : `${facts.named}: head mass`}${first === undefined ? "" : ` for ${aimWords(first)}`}`,
      inputs: facts.inputs,
      lines: [...facts.aims.flatMap((aim) => aimLines(aim, facts)), ...gaugeLine(facts)],
      leavesOut:
        "the length changes at the butt, the head's own inertia stays; a bench agrees to 0.3 points and 1.5 % of inertia. Length is no way to mend swing weight.",
      data: {
        headMassG: first?.headMassG ?? null,
        changedHeadMassG: first?.changedHeadMassG ?? null,
        presentHeadMassG: facts.presentG,
        fromGaugeG: facts.fromGauge?.headChangeG ?? null,
        lengthChangeMm: facts.lengthChangeMm,
        aims: dataOf(facts.aims),
      },
    }),
  );
}
