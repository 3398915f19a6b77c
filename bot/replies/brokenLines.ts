import type { Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import { line } from "./card.ts";
import { isHere } from "./orderButtons.ts";
import { clubWords, shown } from "./shown.ts";

type Finished = NonNullable<ClubFacts["finished"]>;

/** Where a finished club is, in words. */
function whereWords({ where }: Finished): string {
  switch (where.kind) {
    case "drawer":
      return [where.place ?? "place not on record", where.truck === null ? null : `truck ${where.truck}`].filter((part) => part !== null).join(", ");
    case "ready":
      return `ready in truck ${where.truck}, order ${where.order}`;
    case "out":
      return `out with the player on test, order ${where.order}`;
  }
}

/** In a round the nearest finished club comes first; whether it may be replaced is for the referee. Of other work there is none. */
export function brokenLines({ kind, player, state, truck }: OrderFacts, { club, finished }: ClubFacts): readonly Line[] {
  if (kind !== "broke") {
    return [];
  }
  const referee = line("Whether a broken club may be replaced: ask the referee");
  if (finished === null) {
    const build = state === "draft" ? [line("Build one: press it below")] : [];
    return [line({ strong: `No finished ${clubWords(club)} of ${player}` }), ...build, referee];
  }
  const { squaredLoftDeg, lengthMm, swingWeightPoints } = finished.club;
  const reads = [
    ...(squaredLoftDeg === null ? [] : [`true ${shown.angle(squaredLoftDeg)}`]),
    ...(lengthMm === null ? [] : [shown.length(lengthMm)]),
    ...(swingWeightPoints === null ? [] : [shown.swing(swingWeightPoints)]),
  ];
  return [
    line({ strong: `Nearest finished: ${clubWords(club)} ${finished.club.headSerial ?? ""}` }, `, ${whereWords(finished)}`),
    ...(isHere(finished, truck) ? [] : [line("It is not in this truck: have it brought, or build one")]),
    ...(reads.length === 0 ? [] : [line(`It reads ${reads.join(", ")}`)]),
    referee,
  ];
}
