import { assembledClub } from "../club/assembledClub.ts";
import { dryTargets } from "../club/dryTargets.ts";
import { clubFamily } from "../kinds.ts";
import { type Fit, fitAround } from "./fitAround.ts";
import { fromStock, shortageOf } from "./fromStock.ts";
import { massOfHead } from "./massOfHead.ts";
import type { GripModel, ShaftModel, Stocked } from "./parts.ts";
import type { ClubPlan, HeadChoice, PlanFault, PlanResult, Shortage } from "./plan.ts";
import { missingQuantities, type PlanQuestion } from "./planQuestion.ts";
import { rankHeads } from "./rankHeads.ts";
import { remembered } from "./remembered.ts";
import { headComponent } from "./stagedComponents.ts";
import { withSwingWeightMiss } from "./swingWeightMiss.ts";
import { changesFrom } from "./targetChanges.ts";
import { weightSums } from "./weightSums.ts";

interface Chosen {
  readonly choice: HeadChoice;
  readonly runnersUp: readonly HeadChoice[];
  readonly fit: Fit;
  readonly shaft: Stocked<ShaftModel>;
  readonly grip: Stocked<GripModel>;
  readonly lengthMm: number;
}

type Cut = Parameters<typeof fitAround>[0];

const freeModels = <M>(stock: readonly Stocked<M>[]): readonly M[] => stock.filter(({ free }) => free > 0).map(({ model }) => model);

/** Shafts made for the club's family, and grips with or without a rib as wished. */
function suitableStock({ target, parts }: PlanQuestion) {
  const family = clubFamily(target.club);
  return {
    shafts: parts.shafts.filter(({ model }) => family === null || model.forFamilies.includes(family)),
    grips: parts.grips.filter(({ model }) => target.rib === null || model.rib === target.rib),
  };
}

function planned(question: PlanQuestion, { choice, runnersUp, fit, shaft, grip, lengthMm }: Chosen): ClubPlan {
  const { target, reference, parts, allowances } = question;
  const { model } = choice.head;
  const head = massOfHead(choice.head.massG, fit.aim, parts.weights, allowances.weightPorts[model.family]);
  const components = [...fit.around, headComponent(lengthMm, model, head.massG, allowances)];
  const { totalMassG, balancePointMm, swingWeightPoints, inertiaKgCm2 } = assembledClub(components);
  return {
    version: 1,
    club: target.club,
    target,
    choice: withSwingWeightMiss(choice, target.swingWeightPoints, swingWeightPoints, allowances.swingWeightPoints),
    runnersUp,
    shaft: { model: shaft.model, place: shaft.place, placeId: shaft.placeId },
    grip: { model: grip.model, place: grip.place, placeId: grip.placeId },
    weights: head.weights,
    wraps: target.wraps ?? 0,
    tipTrimMm: fit.tipTrimMm,
    buttTrimMm: fit.buttTrimMm,
    bareCutMm: fit.bareCutMm,
    trimmedShaftMassG: fit.shaft.massG,
    trimmedShaftBalanceFromButtMm: fit.shaft.balanceFromButtMm,
    logo: target.logo,
    ...dryTargets(components, grip.model.capMm),
    predicted: { lengthMm, swingWeightPoints, totalMassG, balancePointMm, inertiaKgCm2 },
    headMassWantedG: fit.headMassWantedG,
    leadG: head.leadG,
    changes: reference === null ? [] : changesFrom(reference, target),
  };
}

function refusal(missing: Extract<PlanFault, { code: "missing" }>["quantities"], shortages: readonly Shortage[]): PlanResult {
  const faults: readonly PlanFault[] = [
    ...(missing.length > 0 ? [{ code: "missing" as const, quantities: missing }] : []),
    ...(shortages.length > 0 ? [{ code: "short" as const, shortages }] : []),
  ];
  return { kind: "refused", faults };
}

/** Heads ranked against the wish and the mass that swing weight needs, as far as shaft, grip and length are known. */
function rankForBuild(question: PlanQuestion, cut: Cut | null) {
  const fitOnce = remembered<ReturnType<typeof fitAround>>();
  const sumsFor = weightSums(question);
  return rankHeads(question, freeModels(question.parts.sleeves), {
    massWish: ({ model }, sleeve) => {
      const fit = cut === null ? null : fitOnce(`${model.id} ${sleeve?.id}`, () => fitAround(cut, model, sleeve));
      return fit?.kind !== "fit" || fit.aim === null ? null : { wantedG: fit.aim.wantedG, addableG: sumsFor(model.family) };
    },
  });
}

/** A new club from parts: head and mark, shaft and grip (the player's bin first), cuts, targets and weights. */
export function planBuild(question: PlanQuestion): PlanResult {
  const { target, allowances } = question;
  const { lengthMm } = target;
  const missing = missingQuantities(question, clubFamily(target.club));
  const stock = suitableStock(question);
  const shaft = target.shaft === null ? null : fromStock(stock.shafts, target.shaft);
  const grip = target.grip === null ? null : fromStock(stock.grips, target.grip);
  const cut = shaft === null || grip === null || lengthMm === null ? null : { target, lengthMm, shaft: shaft.model, grip: grip.model, allowances };
  const ranked = rankForBuild(question, cut);
  const headIsNamed = !missing.includes("headModel") && !missing.includes("loft");
  const shortages = [
    ...(headIsNamed && ranked.kind === "short" ? [ranked.shortage] : []),
    ...(target.shaft !== null && shaft === null ? [shortageOf("shaft", target.shaft, stock.shafts)] : []),
    ...(target.grip !== null && grip === null ? [shortageOf("grip", target.grip, stock.grips)] : []),
  ];
  if (missing.length > 0 || ranked.kind === "short" || shaft === null || grip === null || cut === null) {
    return refusal(missing, shortages);
  }
  const fit = fitAround(cut, ranked.choice.head.model, ranked.choice.sleeve);
  if (fit.kind === "refused") {
    return fit;
  }
  return { kind: "planned", plan: planned(question, { ...ranked, fit, shaft, grip, lengthMm: cut.lengthMm }) };
}
