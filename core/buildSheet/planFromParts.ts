import { assembledClub } from "../club/assembledClub.ts";
import { dryTargets } from "../club/dryTargets.ts";
import { clubFamily } from "../kinds.ts";
import { type Fit, fitAround } from "./fitAround.ts";
import { fromStock, shortageOf } from "./fromStock.ts";
import { massOfHead } from "./massOfHead.ts";
import type { GripModel, ShaftModel, Stocked } from "./parts.ts";
import type { ClubPlan, PlanFault, PlanResult, Shortage } from "./plan.ts";
import { missingQuantities, type PlanQuestion } from "./planQuestion.ts";
import type { ChosenHead, HeadsHow, RankedHeads } from "./rankHeads.ts";
import { remembered } from "./remembered.ts";
import { headComponent } from "./stagedComponents.ts";
import { withSwingWeightMiss } from "./swingWeightMiss.ts";
import { changesFrom } from "./targetChanges.ts";
import { weightSums } from "./weightSums.ts";

interface Chosen extends ChosenHead {
  readonly fit: Fit;
  readonly shaft: Stocked<ShaftModel>;
  readonly grip: Stocked<GripModel>;
  readonly lengthMm: number;
}

type Cut = Parameters<typeof fitAround>[0];

type MassWishOf = NonNullable<HeadsHow["massWish"]>;

/** What differs between clubs made of parts: where the head comes from, and whether weights and lead are added to it. */
interface HeadSource {
  readonly rank: (massWish: MassWishOf) => RankedHeads;
  readonly addsMass: boolean;
}

/** Shafts made for the club's family, and grips with or without a rib as wished. */
function suitableStock({ target, parts }: PlanQuestion) {
  const family = clubFamily(target.club);
  return {
    shafts: parts.shafts.filter(({ model }) => family === null || model.forFamilies.includes(family)),
    grips: parts.grips.filter(({ model }) => target.rib === null || model.rib === target.rib),
  };
}

function planned(question: PlanQuestion, chosen: Chosen): ClubPlan {
  const { kind, target, reference, parts, allowances } = question;
  const { choice, runnersUp, elsewhere, remedies, fit, shaft, grip, lengthMm } = chosen;
  const { model } = choice.head;
  const head = massOfHead(choice.head.massG, fit.aim, parts.weights, allowances.weightPorts[model.family]);
  const components = [...fit.around, headComponent(lengthMm, model, head.massG, allowances)];
  const { totalMassG, balancePointMm, swingWeightPoints, inertiaKgCm2 } = assembledClub(components);
  return {
    version: 1,
    kind,
    club: target.club,
    target,
    choice: withSwingWeightMiss(choice, target.swingWeightPoints, swingWeightPoints, allowances.swingWeightPoints),
    runnersUp,
    elsewhere,
    remedies,
    piece: null,
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

/** The mass that swing weight needs of a head, as far as shaft, grip and length are known. */
function massWishFor(question: PlanQuestion, cut: Cut | null): MassWishOf {
  const fitOnce = remembered<ReturnType<typeof fitAround>>();
  const sumsFor = weightSums(question);
  return ({ model }, sleeve) => {
    const fit = cut === null ? null : fitOnce(`${model.id} ${sleeve?.id}`, () => fitAround(cut, model, sleeve));
    return fit?.kind !== "fit" || fit.aim === null ? null : { ...fit.aim, addable: sumsFor(model.family) };
  };
}

/** A club from parts: shaft and grip (the player's bin first), cuts, targets and weights around a head. */
export function planFromParts(question: PlanQuestion, { rank, addsMass }: HeadSource): PlanResult {
  const { target, allowances } = question;
  const { lengthMm } = target;
  const missing = missingQuantities(question, clubFamily(target.club));
  const stock = suitableStock(question);
  const shaft = target.shaft === null ? null : fromStock(stock.shafts, target.shaft);
  const grip = target.grip === null ? null : fromStock(stock.grips, target.grip);
  const isCut = shaft !== null && grip !== null && lengthMm !== null;
  const cut = isCut ? { target, lengthMm, shaft: shaft.model, grip: grip.model, allowances } : null;
  const ranked = rank(massWishFor(question, cut));
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
  return {
    kind: "planned",
    plan: planned(question, { ...ranked, fit: addsMass ? fit : { ...fit, aim: null }, shaft, grip, lengthMm: cut.lengthMm }),
  };
}
