import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { bendWords } from "./bendWords.ts";
import { brokenLines } from "./brokenLines.ts";
import { line } from "./card.ts";
import { headRemedies, missWords } from "./headRemedies.ts";
import { serviceLines, serviceShort } from "./serviceLines.ts";
import { sheetName, shown } from "./shown.ts";

const LEAST_LEAD_G = 0.25;

/** The head chosen: stamped and true are never left to be mixed up. */
function headLine(club: ClubFacts, plan: ClubPlan): Line {
  const { head, attitude, mark } = plan.choice;
  const set = mark === null ? "bonded" : mark;
  return line(
    `Head ${head.serial} ${club.headShown ?? ""} stamped ${shown.stamp(head.stampedLoftDeg)}, ${head.place}, ${set}: true ${shown.angle(attitude.squaredLoftDeg)} / ${angleBeside(plan)}${bendWords(plan.choice)}`,
  );
}

/** Beside the loft stands the face of a wood, the lie of an iron or a wedge. */
function angleBeside({ choice: { head, attitude } }: ClubPlan): string {
  const { family } = head.model;
  return family === "iron" || family === "wedge" || family === "putter"
    ? `lie ${shown.angle(attitude.seatedLieDeg)}`
    : shown.face(attitude.soledFaceDeg);
}

function partsLine(plan: ClubPlan): readonly Line[] {
  const prepared = plan.piece === null ? "" : ` (${plan.piece.state} already)`;
  const shaft =
    plan.shaft === null
      ? []
      : [
          `${plan.shaft.model.name}${prepared}${plan.tipTrimMm ? ` tip ${shown.length(plan.tipTrimMm)}` : ""}${plan.logo === null ? "" : `, logo ${plan.logo}`}`,
        ];
  const grip = plan.grip === null ? [] : [`${plan.grip.model.name}${plan.wraps > 0 ? ` +${plan.wraps}` : ""}`];
  return shaft.length + grip.length === 0 ? [] : [line([...shaft, ...grip].join("; "))];
}

function comesTo(plan: ClubPlan): readonly string[] {
  const { lengthMm, swingWeightPoints, totalMassG } = plan.predicted;
  return [
    ...(lengthMm === null ? [] : [shown.length(lengthMm)]),
    ...(swingWeightPoints === null ? [] : [shown.swing(swingWeightPoints)]),
    ...(totalMassG === null ? [] : [shown.mass(totalMassG)]),
    ...plan.weights.map(({ model, count }) => `${count > 1 ? `${count} × ` : ""}${model.name}`),
    ...(plan.leadG >= LEAST_LEAD_G ? [`lead ${shown.mass(plan.leadG)}`] : []),
  ];
}

function predictedLine(plan: ClubPlan): readonly Line[] {
  const parts = comesTo(plan);
  return parts.length === 0 ? [] : [line(`Comes to ${parts.join(", ")}`)];
}

const yieldsLine = ({ yields }: ClubFacts): readonly Line[] =>
  yields === null ? [] : [line(`Head ${yields.serial} is nearer, and goes to ${yields.toOrder}`)];

/** What one club is built from or has done to it, and what it comes to. */
export function clubLines(facts: OrderFacts, club: ClubFacts): readonly Line[] {
  const { plan, service } = club;
  if (plan !== null) {
    return [...partsLine(plan), headLine(club, plan), ...predictedLine(plan), ...headRemedies(plan), ...yieldsLine(club)];
  }
  return service === null ? brokenLines(facts, club) : serviceLines(service);
}

/** One line a club, for an order of many. */
export function clubRow(facts: OrderFacts, club: ClubFacts): readonly Line[] {
  const { plan, service } = club;
  const name = { strong: sheetName(club) };
  if (service !== null) {
    return [line(name, ` ${serviceShort(service)}`)];
  }
  if (plan === null) {
    return brokenLines(facts, club);
  }
  const { head, attitude } = plan.choice;
  const misses = missWords(plan);
  return [
    line(
      name,
      ` ${head.serial} true ${shown.angle(attitude.squaredLoftDeg)} / ${angleBeside(plan)}${bendWords(plan.choice)}, ${[...comesTo(plan), ...misses].join(", ")}`,
    ),
  ];
}
