import type { ClubPlan, HeadChoice } from "../../core/buildSheet/plan.ts";
import type { Card } from "../chat/types.ts";
import { card, line } from "./card.ts";
import { shown } from "./shown.ts";

const describe = ({ head, attitude, mark }: HeadChoice): string =>
  `${head.serial} stamped ${shown.stamp(head.stampedLoftDeg)}, ${head.place}, ${mark ?? "bonded"}: true ${shown.angle(attitude.squaredLoftDeg)} / ${shown.face(attitude.soledFaceDeg)}, ${shown.mass(head.massG)}`;

/** The runners-up, each with what it comes to. */
export function headsCard(order: { readonly id: number; readonly number: number; readonly version: number }, plan: ClubPlan): Card {
  return card({
    kind: "order.heads",
    title: `${order.number}: other heads`,
    lines: [line(`Now ${describe(plan.choice)}`), ...plan.runnersUp.map((choice) => line(describe(choice)))],
    choices: {
      label: "Take",
      action: { command: "order heads", subject: `order:${order.id}`, version: order.version },
      items: plan.runnersUp.map(({ head, attitude }) => ({
        label: `${head.serial} ${shown.angle(attitude.squaredLoftDeg)} / ${shown.face(attitude.soledFaceDeg)}`,
        value: head.serial,
      })),
    },
  });
}
