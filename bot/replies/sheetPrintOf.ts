import type { Instant } from "../../core/kinds.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import type { Labelled, PrintedClub, SheetPrint } from "../prints/sheetPrint.ts";
import { advice } from "./cautionLine.ts";
import { faultLines } from "./faultWords.ts";
import { orderTitle } from "./orderTitle.ts";
import { printedClub, rowColumns } from "./printedClub.ts";
import { printedSteps } from "./printedSteps.ts";
import { timeText } from "./shown.ts";
import { stateWords } from "./stateWords.ts";
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
    ...(facts.state === "draft" ? ["Draft: nothing is held for it yet, do not cut"] : []),
    ...(facts.heldReason === null ? [] : [`Held: ${facts.heldReason}`]),
    ...(facts.awaitsClub ? [`The ${facts.clubs.length === 1 ? "club is" : "clubs are"} not in the truck yet`] : []),
    ...faultLines(facts, facts.clubs.length > 1),
  ];
}

function notesOf({ asWritten, request: { note } }: OrderFacts): readonly Labelled[] {
  return [
    ...(asWritten === "" ? [] : [{ label: "Wrote", value: asWritten }]),
    ...(note === null || asWritten.includes(note) ? [] : [{ label: "Note", value: note }]),
  ];
}

type Table = Pick<SheetPrint, "first" | "columns" | "clubs">;
type Column = (typeof rowColumns)[number];

/** Parts that most clubs of a set have alike. */
const saidOnce: readonly Column[] = ["Shaft", "Grip"];
const MOST_EXCEPTIONS = 3;

/** `Grip: Gorse Standard, own bin; putter: Heather Wide, main rack`: said before the rows, where few of several clubs differ; else null. */
function saidBefore(clubs: readonly PrintedClub[], column: Column, at: number): string | null {
  const cells = clubs.map(({ row }) => row[at] ?? "");
  const common = cells.find((cell) => cell !== "" && cells.filter((other) => other === cell).length > cells.length / 2);
  const others = clubs.filter(({ row }) => row[at] !== common);
  if (!saidOnce.includes(column) || clubs.length === 1 || common === undefined || others.length > MOST_EXCEPTIONS) {
    return null;
  }
  const exceptions = others.map(({ name, row }) => `${name}: ${row[at] || "as it is"}`);
  return `${column}${others.length === 0 ? ", all" : ""}: ${[common, ...exceptions].join("; ")}`;
}

/** The rows of several clubs: a column that no club needs goes, and so does one that is said before them. */
function tableOf(clubs: readonly PrintedClub[]): Table {
  const said = rowColumns.map((column, at) => saidBefore(clubs, column, at));
  const isKept = rowColumns.map((_, at) => said[at] === null && clubs.some(({ row }) => row[at] !== ""));
  return {
    first: said.filter((words) => words !== null),
    columns: rowColumns.filter((_, at) => isKept[at]),
    clubs: clubs.map((club) => ({ ...club, row: club.row.filter((_, at) => isKept[at]) })),
  };
}

/** All words of the page that lies on the bench beside an order's clubs. */
export function sheetPrintOf(facts: OrderFacts, now: Instant): SheetPrint {
  const table = tableOf(facts.clubs.map((club) => printedClub(facts, club)));
  return {
    title: orderTitle(facts),
    subtitle: subtitleOf(facts, now),
    hand: facts.hand === "left" ? "LEFT-HANDED" : "RIGHT-HANDED",
    due: facts.byAt === null ? null : `by ${timeText(facts.byAt, now, facts.zone)}`,
    printedAt: now,
    headings,
    ...table,
    first: [...firstOf(facts), ...table.first],
    steps: printedSteps(facts),
    notes: notesOf(facts),
    advice,
  };
}
