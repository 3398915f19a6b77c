import type { StockedWeight, WeightAnswer, WeightDeviation } from "../../../core/selection/weightQuestion.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { quarters, signed } from "./calcNumbers.ts";

export interface WeightsFacts {
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly answer: WeightAnswer<StockedWeight>;
  readonly before: { readonly headMassG: number; readonly swingWeightPoints: number | null };
  readonly screws: readonly StockedWeight[];
  readonly leadLengthMm: number | null;
}

const upperFirst = (text: string): string => `${text[0]?.toUpperCase() ?? ""}${text.slice(1)}`;

const side = (mm: number, above: string, below: string): string => `${Math.abs(mm).toFixed(1)} mm to the ${mm < 0 ? below : above}`;

/** A value aimed at, in words. */
const aimWords: { readonly [Q in WeightDeviation["quantity"]]: (value: number) => string } = {
  swingWeightPoints: (value) => shown.swing(value),
  headMassG: (value) => `head ${shown.mass(value)}`,
  centreBackMm: (value) => `centre ${side(value, "back", "front")}`,
  centreToeMm: (value) => `centre ${side(value, "toe", "heel")}`,
};

/** By how much an aim is missed, and which way. */
const missWords: { readonly [Q in WeightDeviation["quantity"]]: (miss: number) => string } = {
  swingWeightPoints: (miss) => `${quarters(Math.abs(miss)).replace("+", "")} points too ${miss < 0 ? "light" : "heavy"}`,
  headMassG: (miss) => `head ${shown.mass(Math.abs(miss))} too ${miss < 0 ? "light" : "heavy"}`,
  centreBackMm: (miss) => `centre ${side(miss, "back", "front")} of it`,
  centreToeMm: (miss) => `centre ${side(miss, "toe", "heel")} of it`,
};

const usedOf = ({ answer }: WeightsFacts, weight: StockedWeight): number => answer.plan.screws.filter((screw) => screw.weight === weight).length;

/** In the order of the bench. */
function partLines({ answer, leadLengthMm }: WeightsFacts): readonly Line[] {
  const { screws, melt, tip, lead } = answer.plan;
  const placed = screws.map(({ port, weight }) =>
    line({ strong: `${upperFirst(port)}: ` }, [weight.name, weight.place].filter((word) => word !== "").join(", ")),
  );
  const nothing = screws.length + Number(melt !== null) + Number(tip !== null) + Number(lead !== null) === 0;
  return [
    ...placed,
    ...(melt === null ? [] : [line({ strong: "Melt: " }, `${shown.mass(melt.massG)}; it cannot be taken out again`)]),
    ...(tip === null ? [] : [line({ strong: "Tip weight: " }, `${shown.mass(tip.massG)}, before bonding`)]),
    ...(lead === null ? [] : [line({ strong: "Lead: " }, `${shown.mass(lead.massG)}, ${shown.both(leadLengthMm ?? 0)} of tape`)]),
    ...(nothing ? [line("Nothing goes on")] : []),
  ];
}

function resultLine({ answer: { plan }, before }: WeightsFacts): Line {
  const moved = [
    ...(Math.abs(plan.centreBackMm) < 0.05 ? [] : [aimWords.centreBackMm(plan.centreBackMm)]),
    ...(Math.abs(plan.centreToeMm) < 0.05 ? [] : [aimWords.centreToeMm(plan.centreToeMm)]),
  ];
  const swing = plan.swingWeightPoints === null ? [] : [shown.swing(plan.swingWeightPoints)];
  return line("Comes to ", [...swing, `head ${shown.mass(plan.headMassG)} (${signed(plan.headMassG - before.headMassG)} g)`, ...moved].join(", "));
}

const isTooHeavy = ({ quantity, got, wanted }: WeightDeviation): boolean =>
  (quantity === "swingWeightPoints" || quantity === "headMassG") && got > wanted;

function missLines({ answer }: WeightsFacts): readonly Line[] {
  if (answer.kind === "reached") return [];
  const said = answer.misses.map(({ quantity, got, wanted }) => missWords[quantity](got - wanted)).join(", ");
  return [
    line({ strong: "Not reached: " }, said),
    ...(answer.misses.some(isTooHeavy) ? [line("Weight has to come off: a lighter head, or say what is in it: screws in 4 4")] : []),
  ];
}

const leftWords = (facts: WeightsFacts): string => facts.screws.map((weight) => `${weight.name} × ${weight.free - usedOf(facts, weight)}`).join(", ");

const missedData = ({ answer }: WeightsFacts) =>
  answer.kind === "reached"
    ? []
    : answer.misses.map(({ quantity, wanted, got, tolerance }) => ({
        [quantity]: got,
        [`wanted${upperFirst(quantity)}`]: wanted,
        [`tolerance${upperFirst(quantity)}`]: tolerance,
      }));

/** What goes where for what is wished of a head, and what it comes to. */
export function weightsReply(facts: WeightsFacts): Reply {
  const { answer, named, before, leadLengthMm } = facts;
  const { plan } = answer;
  const aims = plan.deviations.map(({ quantity, wanted }) => aimWords[quantity](wanted)).join(", ");
  return reply(
    calcCard({
      view: "weights",
      title: `${named === null ? "Weights" : `${named}: weights`} for ${aims}`,
      tone: answer.kind === "reached" ? "plain" : "attention",
      inputs: facts.inputs,
      lines: [...partLines(facts), resultLine(facts), ...missLines(facts)],
      fields: [
        {
          label: "Before",
          value: line(
            [...(before.swingWeightPoints === null ? [] : [shown.swing(before.swingWeightPoints)]), `head ${shown.mass(before.headMassG)}`].join(
              ", ",
            ),
          ),
        },
        ...(facts.screws.length === 0 ? [] : [{ label: "Left", value: line(leftWords(facts)) }]),
        { label: "Order", value: line("screws; melt only when wished; tip weight before bonding; lead last. Never length") },
      ],
      leavesOut:
        "ports count as far down the club as the head's centre; a screw is off by up to 0.2 g, so weigh it. Weight in the butt only fools the scale.",
      data: {
        isReached: answer.kind === "reached",
        screws: plan.screws.map(({ port, weight }) => ({ port, name: weight.name, place: weight.place, massG: weight.massG })),
        meltG: plan.melt?.massG ?? 0,
        tipWeightG: plan.tip?.massG ?? 0,
        leadG: plan.lead?.massG ?? 0,
        leadLengthMm: leadLengthMm ?? 0,
        headMassG: plan.headMassG,
        swingWeightPoints: plan.swingWeightPoints,
        centreBackMm: plan.centreBackMm,
        centreToeMm: plan.centreToeMm,
        headMassBeforeG: before.headMassG,
        swingWeightBeforePoints: before.swingWeightPoints,
        left: facts.screws.map((weight) => ({
          name: weight.name,
          place: weight.place,
          massG: weight.massG,
          leftCount: weight.free - usedOf(facts, weight),
        })),
        misses: missedData(facts),
      },
    }),
  );
}
