import type { Instant } from "../../core/kinds.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import type { Labelled, SheetPrint } from "../prints/sheetPrint.ts";
import { advice } from "./cautionLine.ts";
import { faultLines } from "./faultWords.ts";
import { orderTitle, stateWords } from "./orderCard.ts";
import { printedClub, rowColumns } from "./printedClub.ts";
import { printedSteps } from "./printedSteps.ts";
import { timeText } from "./shown.ts";
import { formatInTimeZone } from "./zonedTime.ts";

const headings = { steps: "Steps", measure: "Measure", notes: "Notes", club: "Club" } as const;

function subtitleOf(facts: OrderFacts, now: Instant): string {
  const { player, postedBy, state, zone, request } = facts;
  const parts = [
    player,
    `for ${postedBy.name}`,
    ...(request.purpose === "gamer" ? [] : [request.purpose]),
    ...(request.to === null ? [] : [`to ${request.to}`]),
    stateWords[state],
    `printed ${formatInTimeZone(now, zone, "EEE d MMM HH:mm")}`,
  ];
  return parts.join(" · ");
}

/** What must be known before anything is cut: why it waits, and what is short. */
function firstOf(facts: OrderFacts): readonly string[] {
  return [
    ...(facts.heldReason === null ? [] : [`Held: ${facts.heldReason}`]),
    ...(facts.awaitsClub ? ["The club is not in the truck yet"] : []),
    ...faultLines(facts.faults, facts.clubs.length > 1),
  ];
}

function notesOf({ asWritten, request: { note } }: OrderFacts): readonly Labelled[] {
  return [
    ...(asWritten === "" ? [] : [{ label: "Wrote", value: asWritten }]),
    ...(note === null || asWritten.includes(note) ? [] : [{ label: "Note", value: note }]),
  ];
}

/** A row without the cells that no club has. */
function withoutEmptyColumns({ columns, clubs }: Pick<SheetPrint, "columns" | "clubs">): Pick<SheetPrint, "columns" | "clubs"> {
  const isUsed = columns.map((_, at) => clubs.some(({ row }) => row[at] !== ""));
  return {
    columns: columns.filter((_, at) => isUsed[at]),
    clubs: clubs.map((club) => ({ ...club, row: club.row.filter((_, at) => isUsed[at]) })),
  };
}

/** All words of the page that lies on the bench beside an order's clubs. */
export function sheetPrintOf(facts: OrderFacts, now: Instant): SheetPrint {
  return {
    title: orderTitle(facts),
    subtitle: subtitleOf(facts, now),
    hand: facts.hand === "left" ? "LEFT-HANDED" : "RIGHT-HANDED",
    due: facts.byAt === null ? null : `by ${timeText(facts.byAt, now, facts.zone)}`,
    printedAt: now,
    headings,
    first: firstOf(facts),
    ...withoutEmptyColumns({ columns: rowColumns, clubs: facts.clubs.map((club) => printedClub(facts, club)) }),
    steps: printedSteps(facts),
    notes: notesOf(facts),
    advice,
  };
}
