import { gramsPerPoint, pointsOfMass } from "../club/massAtPosition.ts";
import { clubFamily } from "../kinds.ts";
import { grams } from "../quantity/units.ts";
import { type HeadMassAim, headMassAim, massOfHead } from "./massOfHead.ts";
import type { HeadModel, SleeveModel } from "./parts.ts";
import type { ClubPlan, PlanFault, PlanResult } from "./plan.ts";
import { missingQuantities, type PlanQuestion } from "./planQuestion.ts";
import { type ChosenHead, rankHeads } from "./rankHeads.ts";
import { sleevesOnRecord } from "./sleevesOnRecord.ts";
import { headFromCapMm } from "./stagedComponents.ts";
import { withSwingWeightMiss } from "./swingWeightMiss.ts";
import { changesFrom } from "./targetChanges.ts";
import { weightSums } from "./weightSums.ts";

type Staying = Extract<PlanFault, { code: "stays-in-swap" }>["quantities"][number];

const stayingByChange: Readonly<Record<string, Staying>> = {
  lengthMm: "length",
  shaft: "shaft",
  grip: "grip",
  tipTrimMm: "tipTrim",
  wraps: "wraps",
  logo: "logo",
  rib: "rib",
};

/** The question with only the heads that go on the sleeve of record: a bonded head does not. */
function withFittingHeads(question: PlanQuestion, onRecord: SleeveModel | null): PlanQuestion {
  const { parts } = question;
  return onRecord === null
    ? question
    : { ...question, parts: { ...parts, heads: parts.heads.filter(({ model }) => model.sleeveFamily === onRecord.family) } };
}

/** What a head must weigh so that the club as it stands comes to the swing weight wished; null where the record is silent. */
function wantedForSwingWeight({ target, reference }: PlanQuestion, model: HeadModel): { wantedG: number; gramsPerPoint: number } | null {
  const known = [target.swingWeightPoints, reference?.swingWeightPoints, reference?.headMassG, reference?.lengthMm];
  const [wished, standing, headMassG, lengthMm] = known;
  if (wished == null || standing == null || headMassG == null || lengthMm == null) {
    return null;
  }
  const perPoint = gramsPerPoint(headFromCapMm(lengthMm, model));
  return { wantedG: headMassG + (wished - standing) * perPoint, gramsPerPoint: perPoint };
}

function aimFor(question: PlanQuestion, model: HeadModel): HeadMassAim | null {
  return headMassAim(question.target.headMassG, wantedForSwingWeight(question, model), question.allowances);
}

/** The club on record with the head's mass exchanged. Balance and inertia of the whole were never measured: unknown. */
function predicted(question: PlanQuestion, model: HeadModel, massG: number): ClubPlan["predicted"] {
  const { reference } = question;
  const { lengthMm = null, headMassG = null, swingWeightPoints = null, totalMassG = null } = reference ?? {};
  const exchangedG = headMassG === null ? null : massG - headMassG;
  return {
    lengthMm,
    swingWeightPoints:
      swingWeightPoints === null || exchangedG === null || lengthMm === null
        ? null
        : swingWeightPoints + pointsOfMass(grams(exchangedG), headFromCapMm(lengthMm, model)),
    totalMassG: totalMassG === null || exchangedG === null ? null : totalMassG + exchangedG,
    balancePointMm: null,
    inertiaKgCm2: null,
  };
}

function planned(question: PlanQuestion, chosen: ChosenHead, changes: readonly string[]): ClubPlan {
  const { choice, runnersUp, elsewhere, remedies } = chosen;
  const { target, reference, parts, allowances } = question;
  const { model } = choice.head;
  const head = massOfHead(choice.head.massG, aimFor(question, model), parts.weights, allowances.weightPorts[model.family]);
  const expected = predicted(question, model, head.massG);
  return {
    version: 1,
    kind: "swap",
    club: target.club,
    target,
    choice: withSwingWeightMiss(choice, target.swingWeightPoints, expected.swingWeightPoints, allowances.swingWeightPoints),
    runnersUp,
    elsewhere,
    remedies,
    piece: null,
    shaft: null,
    grip: null,
    gripMisfit: null,
    weights: head.weights,
    wraps: reference?.wraps ?? 0,
    tipTrimMm: null,
    buttTrimMm: null,
    bareCutMm: null,
    trimmedShaftMassG: null,
    trimmedShaftBalanceFromButtMm: null,
    logo: target.logo,
    dryTargetPoints: null,
    beforeGluePoints: null,
    predicted: expected,
    headMassWantedG: wantedForSwingWeight(question, model)?.wantedG ?? null,
    leadG: head.leadG,
    changes,
  };
}

/** Another head on the club as it stands: shaft, sleeve and grip stay, the mark it was played at comes first. */
export function planSwap(question: PlanQuestion): PlanResult {
  const { target, reference } = question;
  const missing = missingQuantities(question, clubFamily(target.club));
  const changes = reference === null ? [] : changesFrom(reference, target);
  const staying = changes.flatMap((name) => stayingByChange[name] ?? []);
  const sumsFor = weightSums(question);
  const { sleeves, onRecord } = sleevesOnRecord(question);
  const ranked = rankHeads(withFittingHeads(question, onRecord), {
    sleeves,
    preferredMark: reference?.sleeveMark ?? null,
    massWish: (head) => {
      const aim = aimFor(question, head.model);
      return aim === null ? null : { ...aim, addable: sumsFor(head.model.family) };
    },
  });
  const faults: readonly PlanFault[] = [
    ...(missing.length > 0 ? [{ code: "missing" as const, quantities: missing }] : []),
    ...(missing.length === 0 && ranked.kind === "short" ? [{ code: "short" as const, shortages: [ranked.shortage] }] : []),
    ...(staying.length > 0 ? [{ code: "stays-in-swap" as const, quantities: staying }] : []),
  ];
  if (faults.length > 0 || ranked.kind === "short") {
    return { kind: "refused", faults };
  }
  return { kind: "planned", plan: planned(question, ranked, changes) };
}
