import type { BuildRequest, Clauses, Destination } from "../../core/buildSheet/buildRequest.ts";
import type { ClubName, Id, Instant, OrderKind } from "../../core/kinds.ts";

/** A name people may write for a thing of the record, as folded words; several names may point at one thing. */
export interface NamedPlayer {
  readonly id: Id<"player">;
  /** As shown: `Ysolde Quarrie`. The last word is the family name. */
  readonly name: string;
  readonly aliases: readonly string[];
}

/** What the reader knows of the world: names from memory, the clock handed in, and which numbers are open orders here. */
export interface ReadingContext {
  readonly now: Instant;
  readonly zone: string;
  readonly lengthUnit: "in" | "mm";
  readonly players: readonly NamedPlayer[];
  /** Canonical model names, such as `Cairn`, `Dunlin 60 X`, `Gorse Standard Round`. */
  readonly headModels: readonly string[];
  readonly shaftModels: readonly string[];
  readonly gripModels: readonly string[];
  /** What may be written for a restricted model, its code word, and the model's name. */
  readonly codeWords: readonly { readonly code: string; readonly name: string }[];
  readonly sleeveMarks: readonly string[];
  readonly grinds: readonly string[];
  readonly isOpenOrder: (number: number) => boolean;
  /** The clubs a player games now; none when nothing was ever published. */
  readonly bagOf: (player: Id<"player">) => readonly ClubName[];
  /** Counts characters and words visited, when handed in: reading stays linear. */
  readonly steps?: { count: number };
}

/** Where in the text, as half-open offsets of UTF-16 code units. */
export interface Place {
  readonly from: number;
  readonly to: number;
}

/**
 * One thing that keeps a message from being an order. A fault has a value nobody would accept; a question has several
 * meanings. `options` are replacements for the words at `place` (the nearest guess first), each a button.
 */
export interface Problem {
  readonly code: ProblemCode;
  readonly place: Place;
  readonly word: string;
  /** What would be accepted, in plain words: `driver 6–14`. */
  readonly accepted: string;
  readonly options: readonly { readonly label: string; readonly replacement: string }[];
}

export type ProblemCode =
  | "value-out-of-range"
  | "value-unreadable"
  | "no-such-time"
  | "unknown-player"
  | "which-player"
  | "which-club"
  | "unknown-club"
  | "unknown-part"
  | "which-part"
  | "which-meaning"
  | "which-mark"
  | "unknown-destination"
  | "needs-like"
  | "twice"
  | "by-is-past"
  | "unknown-word"
  | "too-long"
  | "unknown-order"
  | "nothing-to-do";

/** Something read otherwise than it was typed; shown, and `go` then waits for one press. */
export interface Mending {
  readonly place: Place;
  readonly typed: string;
  readonly read: string;
  readonly why: "misspelt" | "decimal-comma" | "guessed";
}

export type LiveQuestion =
  | { readonly ask: "where"; readonly player: Id<"player">; readonly club: ClubName | null }
  | { readonly ask: "gaming"; readonly player: Id<"player">; readonly club: ClubName | null }
  | { readonly ask: "owed" }
  | { readonly ask: "short" }
  | { readonly ask: "next" }
  /** A sum for `/calc`, which reads the question itself. */
  | { readonly ask: "calc"; readonly view: "swing" | "bend" }
  /** Whether a twin may take the gamer's place, or which head is nearest to it; who and which club as far as said. */
  | { readonly ask: "match"; readonly player: Id<"player"> | null; readonly club: ClubName | null }
  /** What of the stock fits; the stock's own reader takes the text. */
  | { readonly ask: "find"; readonly text: string }
  | { readonly ask: "replenish" }
  /** When it would be ready, as the order it would be. */
  | { readonly ask: "ready"; readonly text: string };

export type MessageReading =
  /** Not for the bot: nobody is answered. */
  | { readonly kind: "silence" }
  /** A player and a club with nothing readable. */
  | { readonly kind: "hint"; readonly player: Id<"player">; readonly club: ClubName }
  | { readonly kind: "order"; readonly request: BuildRequest; readonly go: boolean; readonly mendings: readonly Mending[] }
  /** All faults and questions at once. What was read is kept with them. */
  | { readonly kind: "problems"; readonly problems: readonly Problem[]; readonly mendings: readonly Mending[]; readonly orderKind: OrderKind | null }
  | {
      readonly kind: "revise";
      readonly number: number;
      readonly clauses: Clauses;
      readonly like: BuildRequest["like"];
      readonly by: BuildRequest["by"];
      readonly to: Destination | null;
      readonly urgent: boolean;
      readonly note: string | null;
      readonly mendings: readonly Mending[];
    }
  | { readonly kind: "hold" | "scratch" | "where" | "resume" | "pause" | "expect"; readonly number: number; readonly reason: string | null }
  /** The technician's line. */
  | { readonly kind: "measured"; readonly number: number; readonly values: readonly MeasuredValue[]; readonly mendings: readonly Mending[] }
  | { readonly kind: "question"; readonly question: LiveQuestion };

export const gaugedQuantities = [
  "squaredLoftDeg",
  "soledFaceDeg",
  "seatedLieDeg",
  "lengthMm",
  "swingWeightPoints",
  "totalMassG",
  "headMassG",
  "bounceDeg",
  "wraps",
  "balancePointMm",
  "frequencyCpm",
  "gripAt2InMm",
  "gripAt6InMm",
] as const;
export type GaugedQuantity = (typeof gaugedQuantities)[number];

export const looks = ["logo", "rib", "stamp", "sleeve", "grip", "shaft"] as const;
type Look = (typeof looks)[number];

interface OfClub {
  /** The club it was said of, null when none was named: the order's only one. */
  readonly club: ClubName | null;
  /** Which of several alike, counted from 1; null when not said. */
  readonly copy: number | null;
  /** As found before the work, or as left after it. */
  readonly stage: "found" | "left";
  readonly asWritten: string;
}

/** One thing of a technician's line: what the gauge or the scale said, or what was seen. */
export type MeasuredValue =
  | (OfClub & { readonly kind: "quantity"; readonly quantity: GaugedQuantity; readonly value: number })
  /** `seen` in the record's words: `up`, `none`, `strong 1`, `Gorse Standard`; a stamp as typed. */
  | (OfClub & { readonly kind: "look"; readonly look: Look; readonly seen: string });
