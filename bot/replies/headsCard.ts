import type { ClubPlan, HeadChoice } from "../../core/buildSheet/plan.ts";
import type { Card } from "../chat/types.ts";
import { bendWords } from "./bendWords.ts";
import { card, line } from "./card.ts";
import { givenUpWords } from "./headRemedies.ts";
import { shown } from "./shown.ts";

const describe = (choice: HeadChoice): string => {
  const { head, attitude, mark } = choice;
  return `${head.serial} stamped ${shown.stamp(head.stampedLoftDeg)}, ${head.place}, ${mark ?? "bonded"}: true ${shown.angle(attitude.squaredLoftDeg)} / ${shown.face(attitude.soledFaceDeg)}, ${shown.mass(head.massG)}${bendWords(choice)}`;
};

/** The runners-up, each with what it comes to and what it gives up; then what is nearer and lies elsewhere. */
export function headsCard(order: { readonly id: number; readonly number: number; readonly version: number }, plan: ClubPlan): Card {
  const { choice, runnersUp, elsewhere } = plan;
  return card({
    kind: "order.heads",
    title: `${order.number}: other heads`,
    lines: [
      line({ strong: `Now ${describe(choice)}` }),
      ...runnersUp.flatMap((other) => [line(describe(other)), line(`  ${givenUpWords(other.givesUp)}`)]),
      ...elsewhere.map((other) => line(`Elsewhere, and nearer: ${describe(other)}`)),
    ],
    choices:
      runnersUp.length === 0
        ? null
        : {
            label: "Take",
            action: { command: "order heads", subject: `order:${order.id}`, version: order.version },
            items: runnersUp.map(({ head, attitude }) => ({
              label: `${head.serial} ${shown.angle(attitude.squaredLoftDeg)} / ${shown.face(attitude.soledFaceDeg)}`,
              value: head.serial,
            })),
          },
    data: {
      orderNumber: order.number,
      heads: [choice, ...runnersUp].map(({ head, attitude, score }) => ({
        headSerial: head.serial,
        squaredLoftDeg: attitude.squaredLoftDeg,
        soledFaceDeg: attitude.soledFaceDeg,
        seatedLieDeg: attitude.seatedLieDeg,
        headMassG: head.massG,
        score,
      })),
    },
  });
}
