import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { BuiltClub } from "../../../core/club/clubParts.ts";
import { gramsPerPoint } from "../../../core/club/massAtPosition.ts";
import { MM_PER_INCH } from "../../../core/quantity/units.ts";
import { type CalcFault, needed } from "../../boundary/calc/fields.ts";
import { headmassFields, LONGEST_CHANGE_MM } from "../../boundary/calc/headmassFields.ts";
import { type CalcQuestion, readCalc } from "../../boundary/calc/readCalc.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { type HeadmassFacts, headmassReply } from "../../replies/calc/headmassCard.ts";
import { asBuiltClub } from "./asBuiltClub.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { type HeadmassWish, headmassAims } from "./headmassAims.ts";
import { modelOfRecord } from "./modelOfRecord.ts";
import { namedPlayers } from "./namedPlayers.ts";
import { type ModelledClub, typedClub } from "./typedClub.ts";

type Question = CalcQuestion<typeof headmassFields>;

const EXAMPLE = "swing d2, head at 36.85, shaft 105 at 17.75, grip 50 at 4.25, ferrule 2.5 at 34.6, tape 3 at 5";

export const headmass = defineCalcView({
  name: "headmass",
  summary: "the head for a swing weight, inertia or new length",
  takes: [
    "An aim: swing d2, or inertia 2750 (kg·cm²)",
    "The club: head at a place (its mass too when it is known), shaft, grip and other parts; or one of the record: oxtoby driver",
    "length +1/2, or 45 for a club of the record: the head that keeps the aim at another length. new head 207: the length that keeps it with another head",
  ],
  examples: [EXAMPLE, "oxtoby driver swing d4", "oxtoby driver length +1/2", "oxtoby driver d3, length 45"],
  answer: (text, context) => {
    const question = readCalc(text, headmassFields, { players: namedPlayers(context), otherParts: true });
    const { club, parts, values, faults, understood } = question;
    const missing = faults.length > 0 ? [] : missingIn(question);
    if (faults.length + missing.length > 0) return calcFaultsReply("headmass", [...faults, ...missing.map(needed)], understood, EXAMPLE);
    const model = club === null ? null : modelOfRecord("headmass", club, understood, context);
    if (model?.kind === "refused") return model.reply;
    const tooFar = lengthFaults(question, model?.found.club.lengthMm ?? null);
    if (tooFar.length > 0) return calcFaultsReply("headmass", tooFar, understood, EXAMPLE);
    if (model !== null) return answered(question, model, { named: model.found.shown, inputs: model.inputs, recorded: model.found.club }, context);
    const typed = typedClub(parts, values);
    return answered(question, typed, { named: null, inputs: [...understood, ...typed.assumed], recorded: null }, context);
  },
});

const wishOf = ({ values }: Question, lengthMm: number | null): HeadmassWish => ({
  swingWeightPoints: values.swing?.value ?? null,
  inertiaKgCm2: values.inertia?.value ?? null,
  lengthChangeMm: values.length === undefined ? null : values.length.value - (values.length.change ? 0 : (lengthMm ?? 0)),
  newHeadG: values["new head"]?.value ?? null,
});

/** A length to reach that is too far from the club's own. */
function lengthFaults({ values }: Question, lengthMm: number | null): readonly CalcFault[] {
  const { length } = values;
  if (length === undefined || length.change || lengthMm === null || Math.abs(length.value - lengthMm) <= LONGEST_CHANGE_MM) return [];
  const [min, max] = [lengthMm - LONGEST_CHANGE_MM, lengthMm + LONGEST_CHANGE_MM].map((mm) => mm / MM_PER_INCH);
  return [{ word: `length ${length.written}`, accepted: { kind: "range", name: "length", min: min ?? 0, max: max ?? 0, unit: "in" }, guess: null }];
}

/** The head's mass is needed only when nothing says what to aim at. */
function missingIn({ club, parts, values }: Question): readonly string[] {
  const head = parts.find(({ name }) => name === "head");
  const hasAim = values.swing !== undefined || values.inertia !== undefined;
  const hasChange = values.length !== undefined || values["new head"] !== undefined;
  const lacking = (["shaft", "grip"] as const).filter((wanted) => parts.every(({ name }) => name !== wanted));
  return [
    ...(hasAim || hasChange ? [] : ["an aim: swing d2, inertia 2750 or length +1/2"]),
    ...(club !== null || (head !== undefined && lacking.length === 0) ? [] : [clubNeeded(head !== undefined, lacking)]),
    ...(club === null && values.length?.change === false ? ["length as a change, +1/2: how long typed parts come out nobody said"] : []),
    ...(club === null && head?.mass === null && hasChange && !hasAim ? ["the head's mass, or an aim"] : []),
  ];
}

const clubNeeded = (hasHead: boolean, lacking: readonly string[]): string =>
  hasHead ? lacking.join(" and ") : `a club: oxtoby driver, or ${["head at a place", ...lacking].join(", ")}`;

interface Shown extends Pick<HeadmassFacts, "named" | "inputs"> {
  readonly recorded: Pick<SpecClub, "swingWeightPoints" | "measuredAt" | "lengthMm"> | null;
}

/** The gauge saw this club: from its reading the model's own error does not count. */
function fromGauge(built: BuiltClub | null, wished: number | null, recorded: Shown["recorded"]): HeadmassFacts["fromGauge"] {
  const standing = recorded?.swingWeightPoints ?? null;
  if (built === null || wished === null || standing === null || recorded?.measuredAt == null) return null;
  return { swingWeightPoints: standing, headChangeG: (wished - standing) * gramsPerPoint(built.head.fromCapMm) };
}

function answered(question: Question, model: ModelledClub, { recorded, ...shown }: Shown, { actor }: Context): Reply {
  const built = asBuiltClub(model.components, model.lengths);
  const wish = wishOf(question, recorded?.lengthMm ?? null);
  return headmassReply({
    ...shown,
    unit: actor.lengthUnit,
    presentG: built === null || built.head.massG === 0 ? null : built.head.massG,
    lengthChangeMm: wish.lengthChangeMm,
    newHeadG: wish.newHeadG,
    fromGauge: fromGauge(built, wish.swingWeightPoints, recorded),
    aims: built === null ? [] : headmassAims(built, wish),
  });
}
