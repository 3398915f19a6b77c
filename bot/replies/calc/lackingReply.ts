import type { Understood } from "../../boundary/calc/fields.ts";
import type { Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";

/** A club of the record that cannot be added up: what is not on record, and what the gauge last said. */
export function lackingReply(
  view: string,
  facts: {
    readonly named: string;
    readonly inputs: readonly Understood[];
    readonly lacking: readonly string[];
    readonly measured: { readonly swingWeightPoints: number | null; readonly totalMassG: number | null; readonly lengthMm: number | null };
  },
): Reply {
  const { swingWeightPoints, totalMassG, lengthMm } = facts.measured;
  const said = [
    ...(swingWeightPoints === null ? [] : [`swing weight ${shown.swing(swingWeightPoints)}`]),
    ...(totalMassG === null ? [] : [`total ${shown.mass(totalMassG)}`]),
    ...(lengthMm === null ? [] : [`length ${shown.both(lengthMm)}`]),
  ];
  return reply(
    calcCard({
      view,
      title: `${facts.named}: too little on record`,
      tone: "attention",
      inputs: facts.inputs,
      lines: [
        line({ strong: "Not on record: " }, facts.lacking.join(", ")),
        ...(said.length === 0 ? [] : [line(`On the gauge ${said.join(", ")}`)]),
        line(`Type its parts instead: /calc ${view} head 200 at 44.5, shaft 60 at 21, grip 50 at 4.25`),
      ],
      leavesOut: "everything, until the record is complete.",
      data: { lacking: facts.lacking, swingWeightPoints, totalMassG, lengthMm },
    }),
  );
}
