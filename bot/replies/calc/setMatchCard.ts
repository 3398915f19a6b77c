import type { Understood } from "../../boundary/calc/fields.ts";
import type { Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { clubWords } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { massChange, matchData, type SetMatch, setValue, spreadWords } from "./setMatch.ts";

/** What to add to each head of a set, or take off, so that all come to one value. */
export function setMatchReply(facts: {
  readonly named: string;
  readonly inputs: readonly Understood[];
  readonly match: SetMatch;
  readonly isInertiaMeasured: boolean;
  readonly lacking: readonly string[];
}): Reply {
  const { match, lacking } = facts;
  const say = (value: number): string => setValue(match.quantity, value);
  const isInertia = match.quantity === "inertiaKgCm2";
  return reply(
    calcCard({
      view: "match",
      title: `${facts.named}: heads for ${say(match.target)}`,
      inputs: facts.inputs,
      lines: [
        ...match.rows.map(({ club, before, massG, after }) =>
          line({ strong: clubWords(club) }, ` ${say(before)}: ${massChange(massG)}${massG === 0 ? "" : `, then ${say(after)}`}`),
        ),
        line(`All: ${spreadWords(match)}`),
        ...(isInertia && !facts.isInertiaMeasured ? [line("Inertias added up by their parts: not swung")] : []),
        ...(lacking.length === 0 ? [] : [line(`Too little on record: ${lacking.map(clubWords).join(", ")}`)]),
      ],
      leavesOut: isInertia
        ? "where on the head the mass goes, and lengths. Benches agree to 1.5 % of inertia only."
        : "lengths and inertia: an even swing weight is no even inertia. A scale reads to 0.3 points, 0.5 to 0.7 g.",
      data: { ...matchData(match), lacking },
    }),
  );
}

/** Fewer than two clubs of the set can be added up. */
export const tooFewReply = (named: string, inputs: readonly Understood[], lacking: readonly string[]): Reply =>
  reply(
    calcCard({
      view: "match",
      title: `${named}: too little on record`,
      tone: "attention",
      inputs,
      lines: [line(`Two clubs need head, shaft, grip and length on record; these lack some: ${lacking.map(clubWords).join(", ")}`)],
      leavesOut: "everything, until the record is complete.",
      data: { lacking },
    }),
  );
