import type { Understood } from "../../boundary/calc/fields.ts";
import type { Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { pointsWords } from "./calcNumbers.ts";

export interface LeadFacts {
  readonly inputs: readonly Understood[];
  readonly leadG: number;
  readonly leadLengthMm: number;
  readonly clubs: readonly { readonly name: string; readonly points: number }[];
}

/** Lead tape by mass and by length, and what it does on a head. */
export const leadReply = ({ inputs, leadG, leadLengthMm, clubs }: LeadFacts): Reply =>
  reply(
    calcCard({
      view: "weights",
      title: `Lead ${shown.mass(leadG)}: ${shown.both(leadLengthMm)} of tape`,
      inputs,
      lines: clubs.map(({ name, points }) => line({ strong: `${name} ` }, pointsWords(points))),
      leavesOut:
        "glue and wear of the tape: a roll weighs 2 to 15 % less than its measures say. Weigh a length of it (roll 4.6 g, roll length 10 in); the scale has the last word.",
      data: { leadG, leadLengthMm, clubs: clubs.map(({ name, points }) => ({ name, swingWeightPoints: points })) },
    }),
  );
