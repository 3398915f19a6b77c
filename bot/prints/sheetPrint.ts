import type { Instant } from "../../core/kinds.ts";

export interface Labelled {
  readonly label: string;
  readonly value: string;
}

/** What is read off a gauge: wanted, how far off it may be, and what was read already. */
export interface PrintedTarget {
  readonly what: string;
  readonly wanted: string;
  readonly tolerance: string;
  readonly measured: string | null;
}

export interface PrintedClub {
  readonly name: string;
  /** What is set or done first: printed first and largest. */
  readonly setting: Labelled | null;
  /** What is cut and set by hand, printed large. */
  readonly lead: readonly Labelled[];
  readonly parts: readonly Labelled[];
  /** The same for a table of many clubs, one cell a column. */
  readonly row: readonly string[];
  readonly targets: readonly PrintedTarget[];
}

export interface PrintedStep {
  readonly words: string;
  readonly minutes: string;
  /** Of this step and no other. */
  readonly cautions: readonly string[];
  /** One for each club, in their order; `none` where a club has no such step. */
  readonly ticks: readonly ("todo" | "done" | "none")[];
}

/** All words of one page for the bench, as plain JSON. The layout adds nothing but boxes, rules and `+3` for what found no room. */
export interface SheetPrint {
  readonly title: string;
  readonly subtitle: string;
  readonly hand: string;
  readonly due: string | null;
  readonly printedAt: Instant;
  readonly headings: { readonly steps: string; readonly measure: string; readonly notes: string; readonly club: string };
  /** What must be known before anything is cut, such as what is short. */
  readonly first: readonly string[];
  /** Heads the cells of each club's row. */
  readonly columns: readonly string[];
  /** From 1 to 14. */
  readonly clubs: readonly PrintedClub[];
  readonly steps: readonly PrintedStep[];
  readonly notes: readonly Labelled[];
  readonly advice: string;
}
