import type { Understood } from "../../boundary/calc/fields.ts";
import type { Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { calcCard } from "./calcCard.ts";
import { pointsWords } from "./calcNumbers.ts";
import { type PointsWish, wishData, wishLine } from "./wishLine.ts";

/** Points on no club in particular: what they take on the usual driver and 7-iron. */
export function typicalPointsReply(inputs: readonly Understood[], clubs: readonly { readonly name: string; readonly wish: PointsWish }[]): Reply {
  const points = clubs[0]?.wish.points ?? 0;
  return reply(
    calcCard({
      view: "swing",
      title: `${pointsWords(points)} of swing weight`,
      inputs,
      lines: [
        ...clubs.map(({ name, wish }) => wishLine(wish, `${name} `)),
        line("Name the club for its own numbers: /calc swing oxtoby driver +2 points"),
      ],
      leavesOut: "the club's own length and parts. Weight in the butt lowers the reading, not the effort.",
      data: { wishedPoints: points, clubs: clubs.map(({ name, wish }) => ({ name, ...wishData(wish) })) },
    }),
  );
}
