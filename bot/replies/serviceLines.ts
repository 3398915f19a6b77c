import type {
  BendPlan,
  CheckPlan,
  GrindPlan,
  ReadOnRecord,
  RegripPlan,
  RepairPlan,
  ServicePlan,
  StampPlan,
  TurnPlan,
} from "../../core/buildSheet/servicePlan.ts";
import type { Line } from "../chat/types.ts";
import { line } from "./card.ts";
import { quantityWords } from "./faultWords.ts";
import { readingText } from "./readingText.ts";
import { shown } from "./shown.ts";

type Angle = "squaredLoftDeg" | "soledFaceDeg" | "seatedLieDeg" | "bounceDeg";
const angleWords: Readonly<Record<Angle, string>> = { squaredLoftDeg: "true", soledFaceDeg: "face", seatedLieDeg: "lie", bounceDeg: "bounce" };

/** `true 9.2 > 8.6`; what is not known before stands as a question mark. */
function moved(name: Angle, from: number | null, to: number | null): readonly string[] {
  if (to === null) {
    return [];
  }
  const say = (value: number): string => readingText(name, value);
  if (from !== null && say(from) === say(to)) {
    return [`${angleWords[name]} stays ${say(to)}`];
  }
  return [from === null ? `${angleWords[name]} to ${say(to)}` : `${angleWords[name]} ${say(from)} > ${say(to)}`];
}

function turnLines(plan: TurnPlan): readonly Line[] {
  const { before, after, logoBefore, logoAfter } = plan;
  const readings = (["squaredLoftDeg", "soledFaceDeg", "seatedLieDeg"] as const).flatMap((name) => moved(name, before[name], after[name]));
  const logo = logoAfter === null ? [] : [`logo ${logoBefore ?? "?"} > ${logoAfter === "turned" ? "turned to the side" : logoAfter}`];
  const rib = plan.gripTurnsWrong === true ? ["the grip's rib ends turned: regrip, or ask"] : [];
  return [
    line({ strong: `Sleeve ${plan.fromMark ?? "as found"} > ${plan.toMark}` }),
    ...(readings.length === 0 ? [line("No reading on record: gauge it before the turn too")] : [line(readings.join(", "))]),
    ...(logo.length + rib.length === 0 ? [] : [line([...logo, ...rib].join("; "))]),
    ...(plan.turnedFromStandard ? [line("Away from standard: many players refuse a turned sleeve")] : []),
    ...plan.misses.map((miss) =>
      line(`Nearest mark misses ${quantityWords[miss.quantity] ?? miss.quantity} by ${shown.angle(Math.abs(miss.got - miss.wanted))}`),
    ),
  ];
}

function regripLines(plan: RegripPlan): readonly Line[] {
  const { grip, wraps, logo, rib, swingWeightChangePoints, massChangeG } = plan;
  const change =
    swingWeightChangePoints === null || massChangeG === null || Math.abs(swingWeightChangePoints) < 0.125
      ? []
      : [line(`Swing weight ${signed(swingWeightChangePoints)} points, total ${signed(massChangeG)} g`)];
  return [
    line({ strong: `Grip ${grip.model.name}${wraps > 0 ? ` +${wraps}` : ""}` }, `, ${grip.place}`),
    line(`${rib ? "With rib" : "No rib"}, logo ${logo ?? "as played: ask"}`),
    ...(plan.coreMismatch === true && plan.buttOverCoreMm !== null
      ? [line(`Core and butt are ${shown.angle(Math.abs(plan.buttOverCoreMm))} mm apart: it comes out off its size`)]
      : []),
    ...change,
  ];
}

const signed = (value: number): string => `${value < 0 ? "−" : "+"}${shown.angle(Math.abs(value))}`;

function bendLines(plan: BendPlan): readonly Line[] {
  const { from, to, loftChangeDeg, lieChangeDeg, allowance } = plan;
  const by = [
    ...(loftChangeDeg === null || loftChangeDeg === 0 ? [] : [`${shown.angle(Math.abs(loftChangeDeg))} ${loftChangeDeg > 0 ? "weak" : "strong"}`]),
    ...(lieChangeDeg === null || lieChangeDeg === 0 ? [] : [`${shown.angle(Math.abs(lieChangeDeg))} ${lieChangeDeg > 0 ? "upright" : "flat"}`]),
  ];
  const readings = (["squaredLoftDeg", "seatedLieDeg", "bounceDeg"] as const).flatMap((name) => moved(name, from[name], to[name]));
  return [
    line({ strong: `Bend ${readings.join(", ")}` }),
    ...(by.length === 0 ? [line("As found decides how far")] : [line(`That is ${by.join(", ")}; as found decides`)]),
    ...(allowance.kind === "warned"
      ? [line(`A far bend: ${shown.angle(Math.max(allowance.totalLoftDeg, allowance.totalLieDeg))} in all. Look for cracks before and after`)]
      : []),
  ];
}

function grindLines(plan: GrindPlan): readonly Line[] {
  const what = [
    ...(plan.bounceWantedDeg === null ? [] : moved("bounceDeg", plan.bounceBeforeDeg, plan.bounceWantedDeg)),
    ...(plan.grindWanted === null ? [] : [`grind ${plan.grindBefore === null ? "" : `${plan.grindBefore} > `}${plan.grindWanted}`]),
    ...(plan.note === null ? [] : [plan.note]),
  ];
  return [line({ strong: `Sole work: ${what.join(", ")}` }), line("By a qualified grinder; head mass and bounce are measured after")];
}

const stampLines = (plan: StampPlan): readonly Line[] => [
  line({ strong: `Stamp ${plan.text}` }, plan.before === null ? "" : ` (on it already: ${plan.before})`),
];

const readWords = (reads: readonly ReadOnRecord[]): string =>
  reads
    .map(({ quantity, onRecord }) => `${quantityWords[quantity] ?? quantity}${onRecord === null ? "" : ` ${readingText(quantity, onRecord)}`}`)
    .join(", ");

const lookWords = { crack: "cracks", rattle: "rattle", grip: "grip", grooves: "grooves" } as const;

const checkLines = (plan: CheckPlan): readonly Line[] => [
  line(`Read ${readWords(plan.reads)}, as found > as left`),
  line(`Look for ${plan.lookOver.map((look) => lookWords[look]).join(", ")}`),
];

const repairLines = (plan: RepairPlan): readonly Line[] => [
  line({ strong: plan.complaint }),
  ...(plan.reads.length === 0 ? [] : [line(`Read after: ${readWords(plan.reads)}`)]),
];

/** What is done to a club that exists, and what it comes to. */
export function serviceLines(plan: ServicePlan): readonly Line[] {
  switch (plan.kind) {
    case "turn":
      return turnLines(plan);
    case "regrip":
      return regripLines(plan);
    case "bend":
      return bendLines(plan);
    case "grind":
      return grindLines(plan);
    case "stamp":
      return stampLines(plan);
    case "check":
      return checkLines(plan);
    case "repair":
      return repairLines(plan);
  }
}

/** The same in a few words, for a line of many clubs. */
export function serviceShort(plan: ServicePlan): string {
  switch (plan.kind) {
    case "turn":
      return `${plan.fromMark ?? "as found"} > ${plan.toMark}`;
    case "regrip":
      return `${plan.grip.model.name}${plan.wraps > 0 ? ` +${plan.wraps}` : ""}, ${plan.grip.place}`;
    case "bend":
      return (["squaredLoftDeg", "seatedLieDeg"] as const).flatMap((name) => moved(name, plan.from[name], plan.to[name])).join(", ");
    case "grind":
      return plan.bounceWantedDeg === null ? (plan.grindWanted ?? plan.note ?? "") : `bounce ${shown.angle(plan.bounceWantedDeg)}`;
    case "stamp":
      return plan.text;
    case "check":
      return readWords(plan.reads);
    case "repair":
      return plan.complaint;
  }
}
