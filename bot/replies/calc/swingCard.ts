import type { AssembledClub } from "../../../core/club/assembledClub.ts";
import type { ClubComponent } from "../../../core/club/clubComponent.ts";
import type { sensitivities } from "../../../core/club/sensitivities.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Card, Json, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { inertia, lengthWords, pointsWords, signed } from "./calcNumbers.ts";
import { type PointsWish, wishData, wishLine } from "./wishLine.ts";

export interface SwingFacts {
  /** What the club is called; null for one that was typed. */
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly unit: "in" | "mm";
  readonly club: AssembledClub;
  readonly parts: readonly ClubComponent[];
  /** Null when head, shaft or grip is missing from the parts. */
  readonly effects: ReturnType<typeof sensitivities> | null;
  readonly wish: PointsWish | null;
  /** As last left on the gauge, or as an order plans it. */
  readonly recorded: { readonly swingWeightPoints: number | null; readonly totalMassG: number | null; readonly isMeasured: boolean } | null;
}

type Fields = Card["fields"];

const placed = ({ name, massG, fromCapMm }: ClubComponent, unit: SwingFacts["unit"]): string =>
  `${name} ${shown.mass(massG)} at ${lengthWords(fromCapMm, unit)}`;

function recordedLine({ recorded }: SwingFacts): readonly Line[] {
  const said = [
    ...(recorded?.swingWeightPoints == null ? [] : [shown.swing(recorded.swingWeightPoints)]),
    ...(recorded?.totalMassG == null ? [] : [`total ${shown.mass(recorded.totalMassG)}`]),
  ];
  return said.length === 0 ? [] : [line(`${recorded?.isMeasured === true ? "On the gauge" : "Planned"} ${said.join(", ")}`)];
}

function effectFields({ effects }: SwingFacts): Fields {
  if (effects === null) return [];
  const row = (label: string, change: (typeof effects)["headOneGram"]) => ({
    label,
    value: line(`${signed(change.swingWeightPoints)} points, ${signed(change.inertiaKgCm2)} kg·cm²`),
  });
  return [
    { label: "One point at the head", value: line(shown.mass(effects.headGramsPerPointG)) },
    row("1 g in the head", effects.headOneGram),
    row("1 g in the tip", effects.tipOneGram),
    row("5 g more grip", effects.gripFiveGrams),
    row("9 g more shaft", effects.shaftNineGrams),
    row("1/2 in longer", effects.halfInchLonger),
    row("10 g in the butt", effects.buttTenGrams),
  ];
}

function effectData({ effects }: SwingFacts): { readonly [key: string]: Json } {
  if (effects === null) return { sensitivities: null };
  const { headGramsPerPointG, ...changes } = effects;
  return { headGramsPerPointG, sensitivities: Object.fromEntries(Object.entries(changes).map(([name, change]) => [name, { ...change }])) };
}

/** A club added up: weight, balance, swing weight, inertia, and what small changes do to it. */
export function swingReply(facts: SwingFacts): Reply {
  const { club, parts, named, wish } = facts;
  return reply(
    calcCard({
      view: "swing",
      title: `${named === null ? "Swing weight" : `${named}: by its parts`} ${shown.swing(club.swingWeightPoints)}${wish === null ? "" : `; ${pointsWords(wish.points)} is ${signed(wish.headG)} g`}`,
      inputs: facts.inputs,
      lines: [
        ...(wish === null ? [] : [wishLine(wish)]),
        line(`Total ${shown.mass(club.totalMassG)}, balance ${shown.both(club.balancePointMm)} from the cap`),
        line(`Inertia about the butt ${inertia(club.inertiaKgCm2)}; ${inertia(club.pointInertiaKgCm2)} with the parts as points`),
        ...recordedLine(facts),
      ],
      fields: [
        { label: "On the scale", value: line(`${club.swingWeightInOz.toFixed(1)} in-oz at 14 in, ${club.oldScaleInOz.toFixed(1)} on the old 12 in`) },
        ...effectFields(facts),
        ...(named === null ? [] : [{ label: "Parts", value: line(parts.map((part) => placed(part, facts.unit)).join(", ")) }]),
      ],
      leavesOut:
        "masses lie on the shaft axis; a bench agrees to 0.3 points, 1 mm and 1.5 % of inertia. Weight in the butt lowers the reading, not the effort.",
      data: {
        ...club,
        parts: parts.map(({ name, massG, fromCapMm, ownInertiaKgCm2 }) => ({ name, massG, fromCapMm, ownInertiaKgCm2: ownInertiaKgCm2 ?? 0 })),
        ...effectData(facts),
        ...(wish === null ? {} : wishData(wish)),
      },
    }),
  );
}
