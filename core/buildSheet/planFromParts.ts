import { assembledClub } from "../club/assembledClub.ts";
import { dryTargets } from "../club/dryTargets.ts";
import { clubFamily, type Id } from "../kinds.ts";
import { millimetres } from "../quantity/units.ts";
import { chooseGrip, type GripChoice } from "./chooseGrip.ts";
import { chooseShaft, type ShaftChoice } from "./chooseShaft.ts";
import { type Fit, fitAround } from "./fitAround.ts";
import { massOfHead } from "./massOfHead.ts";
import type { ShaftModel } from "./parts.ts";
import type { ClubPlan, HeadChoice, PlanFault, PlanResult, Shortage } from "./plan.ts";
import { missingQuantities, type PlanQuestion } from "./planQuestion.ts";
import type { ChosenHead, HeadsHow, RankedHeads } from "./rankHeads.ts";
import { remembered } from "./remembered.ts";
import { headComponent } from "./stagedComponents.ts";
import { withSwingWeightMiss } from "./swingWeightMiss.ts";
import { changesFrom } from "./targetChanges.ts";
import { weightSums } from "./weightSums.ts";

interface Chosen extends ChosenHead {
  readonly fit: Fit;
  readonly shaft: Exclude<ShaftChoice, { readonly kind: "short" }>;
  readonly grip: Extract<GripChoice, { readonly kind: "stocked" }>;
  readonly lengthMm: number;
}

type Cut = Parameters<typeof fitAround>[0];

type MassWishOf = NonNullable<HeadsHow["massWish"]>;

/** What differs between clubs made of parts: where the head comes from, and whether weights and lead are added to it. */
interface HeadSource {
  readonly rank: (massWish: MassWishOf) => RankedHeads;
  readonly addsMass: boolean;
}

/** The shaft wanted, raw or prepared, as far as one lies here; its numbers are needed before a head is chosen. */
function shaftHere({ target, parts }: PlanQuestion): ShaftModel | null {
  const family = clubFamily(target.club);
  const models = [...parts.shafts.filter(({ free }) => free > 0), ...(parts.pieces ?? [])].map(({ model }) => model);
  return models.find(({ name, forFamilies }) => name === target.shaft && (family === null || forFamilies.includes(family))) ?? null;
}

/** Which of that model it is built from; before a head is chosen, only why there is none. */
function chosenShaft(
  question: PlanQuestion,
  shaft: string,
  cut: { readonly tipTrimMm: number; readonly bareCutMm: number },
  head: HeadChoice | null,
) {
  const { target, parts, allowances, forGamer = true } = question;
  const { sleeve, mark } = head ?? { sleeve: null, mark: null };
  return chooseShaft({
    shaft,
    family: clubFamily(target.club),
    hand: target.hand,
    forGamer,
    tipTrimMm: millimetres(cut.tipTrimMm),
    bareCutMm: millimetres(cut.bareCutMm),
    leastParallelTipMm: millimetres(allowances.leastParallelTipMm),
    sleeve: sleeve === null || mark === null ? null : { model: sleeve, mark },
    logo: target.logo,
    stock: parts.shafts,
    pieces: parts.pieces ?? [],
    elsewhere: parts.elsewhere?.shafts ?? [],
    known: parts.known?.shafts ?? [],
  });
}

/** A usual butt, where no shaft says what is under the grip. */
const USUAL_BUTT_MM = 15.2;

function chosenGrip({ target, parts }: PlanQuestion, grip: string, shaft: ShaftModel | null): GripChoice {
  return chooseGrip({
    grip,
    rib: target.rib,
    buttDiameterMm: shaft?.buttDiameterMm ?? millimetres(USUAL_BUTT_MM),
    wraps: target.wraps ?? 0,
    stock: parts.grips,
    elsewhere: parts.elsewhere?.grips ?? [],
    known: parts.known?.grips ?? [],
  });
}

/** A sleeve is needed, and neither a free one nor one on the shaft is at hand. */
function lacksSleeve({ kind, parts }: PlanQuestion, { sleeve }: HeadChoice, shaft: Chosen["shaft"]): boolean {
  const isOnShaft = shaft.kind === "piece" && shaft.piece.sleeve !== null;
  return kind === "build" && sleeve !== null && !isOnShaft && !parts.sleeves.some(({ model, free }) => model.id === sleeve.id && free > 0);
}

const placed = <M>({ model, place, placeId }: { readonly model: M; readonly place: string; readonly placeId: Id<"place"> }) => ({
  model,
  place,
  placeId,
});

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
    piece: shaft.kind === "piece" ? shaft.piece : null,
    shaft: placed(shaft.kind === "piece" ? shaft.piece : shaft.row),
    grip: placed(grip.row),
    gripMisfit: grip.misfit,
    weights: head.weights,
    wraps: target.wraps ?? 0,
    tipTrimMm: fit.tipTrimMm,
    buttTrimMm: shaft.kind === "piece" ? shaft.buttTrimMm : fit.buttTrimMm,
    bareCutMm: fit.bareCutMm,
    trimmedShaftMassG: fit.shaft.massG,
    trimmedShaftBalanceFromButtMm: fit.shaft.balanceFromButtMm,
    logo: target.logo,
    ...dryTargets(components, grip.row.model.capMm),
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
  const model = shaftHere(question);
  const grip = target.grip === null ? null : chosenGrip(question, target.grip, model);
  const isCut = model !== null && grip?.kind === "stocked" && lengthMm !== null;
  const cut = isCut ? { target, lengthMm, shaft: model, grip: grip.row.model, allowances } : null;
  const ranked = rank(massWishFor(question, cut));
  const headIsNamed = !missing.includes("headModel") && !missing.includes("loft");
  const uncut = { tipTrimMm: target.tipTrimMm ?? 0, bareCutMm: lengthMm ?? 1 };
  const noShaft = target.shaft === null || model !== null ? null : chosenShaft(question, target.shaft, uncut, null);
  const shortages = [
    ...(headIsNamed && ranked.kind === "short" ? [ranked.shortage] : []),
    ...(noShaft?.kind === "short" ? [noShaft.shortage] : []),
    ...(grip?.kind === "short" ? [grip.shortage] : []),
  ];
  if (missing.length > 0 || ranked.kind === "short" || grip?.kind !== "stocked" || cut === null) {
    return refusal(missing, shortages);
  }
  const fit = fitAround(cut, ranked.choice.head.model, ranked.choice.sleeve);
  if (fit.kind === "refused") {
    return fit;
  }
  const shaft = chosenShaft(question, cut.shaft.name, fit, ranked.choice);
  if (shaft.kind === "short") {
    return refusal([], [shaft.shortage]);
  }
  if (lacksSleeve(question, ranked.choice, shaft)) {
    return refusal([], [{ part: "sleeve", wanted: ranked.choice.sleeve?.name ?? "", nearest: [] }]);
  }
  return {
    kind: "planned",
    plan: planned(question, { ...ranked, fit: addsMass ? fit : { ...fit, aim: null }, shaft, grip, lengthMm: cut.lengthMm }),
  };
}
