import type { ClubPlan } from "../../core/buildSheet/plan.ts";
import type { Line } from "../chat/types.ts";
import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import type { Labelled, PrintedClub } from "../prints/sheetPrint.ts";
import { bendWords } from "./bendWords.ts";
import { brokenLines } from "./brokenLines.ts";
import { dryWords, gripWords, headWords, LEAST_LEAD_G, leadWords, orientationWords, shaftWords, tipWords, weightWords } from "./partWords.ts";
import { printedTargets } from "./printedTargets.ts";
import { serviceLines, serviceShort } from "./serviceLines.ts";
import { sheetName, shown } from "./shown.ts";

const labelled = (label: string, value: string): Labelled => ({ label, value });

/** A line of a card as print: no times and no calls stand in those of a sheet. */
const inPrint = (line: Line): string => line.map((span) => (typeof span === "string" ? span : "strong" in span ? span.strong : "")).join("");

/** Head of each cell of a club's row; the work of a club that is not built has a cell of its own. */
export const rowColumns = ["Bare cut", "Tip", "Dry", "Set", "Head", "Shaft", "Grip", "Weight", "Work"] as const;

type Cells = Readonly<Partial<Record<(typeof rowColumns)[number], string>>>;

function builtCells({ player }: OrderFacts, club: ClubFacts, plan: ClubPlan): Cells {
  const weight = [...plan.weights.map(weightWords), ...(plan.leadG >= LEAST_LEAD_G ? [`lead ${shown.mass(plan.leadG)}`] : [])];
  return {
    ...(plan.bareCutMm === null ? {} : { "Bare cut": shown.both(plan.bareCutMm) }),
    ...(plan.tipTrimMm === null ? {} : { Tip: tipWords(plan, shown.length) }),
    ...(plan.dryTargetPoints === null ? {} : { Dry: shown.swing(plan.dryTargetPoints) }),
    Set: `${plan.choice.mark ?? "bonded"}; logo ${plan.logo ?? "ask"}${plan.grip?.model.rib === true ? ", rib in line" : ""}`,
    Head: headWords(club, plan, ""),
    ...(plan.shaft === null ? {} : { Shaft: shaftWords(plan.shaft, plan.piece, player) }),
    ...(plan.grip === null ? {} : { Grip: gripWords(plan.grip, plan.wraps, player) }),
    ...(weight.length === 0 ? {} : { Weight: weight.join(", ") }),
  };
}

/** What is only read stands with the boxes to write in. */
function cellsOf(facts: OrderFacts, club: ClubFacts): Cells {
  const { plan, service } = club;
  if (plan !== null) {
    return builtCells(facts, club, plan);
  }
  return service?.kind === "check" ? {} : { Work: service === null ? brokenLines(facts, club).map(inPrint).join("; ") : serviceShort(service) };
}

const builtLead = (plan: ClubPlan): readonly Labelled[] => [
  ...(plan.bareCutMm === null ? [] : [labelled("Bare cut", shown.both(plan.bareCutMm))]),
  ...(plan.tipTrimMm === null ? [] : [labelled("Tip", tipWords(plan, shown.both))]),
  ...(plan.dryTargetPoints === null ? [] : [labelled(`Dry swing weight, ${dryWords}`, shown.swing(plan.dryTargetPoints))]),
  labelled("Orientation", orientationWords(plan)),
];

function builtParts(facts: OrderFacts, club: ClubFacts, plan: ClubPlan): readonly Labelled[] {
  const { head, attitude } = plan.choice;
  const { spine, ferrule } = facts.request.clauses;
  return [
    labelled("Head", headWords(club, plan)),
    labelled("", `stamped ${shown.stamp(head.stampedLoftDeg)}, true ${shown.angle(attitude.squaredLoftDeg)} as it will be left`),
    ...(plan.shaft === null ? [] : [labelled("Shaft", shaftWords(plan.shaft, plan.piece))]),
    ...(spine === undefined ? [] : [labelled("Spine", spine.asWritten)]),
    ...(ferrule === undefined ? [] : [labelled("Ferrule", ferrule.asWritten)]),
    ...(plan.grip === null ? [] : [labelled("Grip", gripWords(plan.grip, plan.wraps))]),
    ...(plan.weights.length === 0 ? [] : [labelled("Weights", plan.weights.map(weightWords).join(", "))]),
    ...(plan.leadG >= LEAST_LEAD_G ? [labelled("Lead", leadWords(plan.leadG))] : []),
  ];
}

/** Large what is done first, small the rest. */
function workedOn(lines: readonly Line[]): Pick<PrintedClub, "setting" | "lead" | "parts"> {
  const [first, ...rest] = lines.map(inPrint);
  return { setting: first === undefined ? null : labelled("", first), lead: [], parts: rest.map((text) => labelled("", text)) };
}

/** One club in the words of its print. */
export function printedClub(facts: OrderFacts, club: ClubFacts): PrintedClub {
  const { plan, service } = club;
  const cells = cellsOf(facts, club);
  const work =
    plan === null
      ? workedOn(service === null ? brokenLines(facts, club) : serviceLines(service))
      : {
          setting: labelled("Sleeve, set first", `${plan.choice.mark ?? "none: bonded"}${bendWords(plan.choice)}`),
          lead: builtLead(plan),
          parts: builtParts(facts, club, plan),
        };
  return {
    name: sheetName(club),
    ...work,
    row: rowColumns.map((column) => cells[column] ?? ""),
    targets: printedTargets(facts, club),
  };
}
