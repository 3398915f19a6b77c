import type { Bag } from "../../core/bag/specClub.ts";
import type { Skill } from "../../core/bench/benchTypes.ts";
import type { GripModel, HeadModel, ShaftModel, ShaftPiece, SleeveModel, WeightModel } from "../../core/buildSheet/parts.ts";
import type { Bend } from "../../core/head/afterBend.ts";
import type { Hand, Instant, OrderKind } from "../../core/kinds.ts";

type Role = "rep" | "technician" | "lead" | "viewer";

/** A team's week as its files tell it, read and checked as a whole: keys are the names written in the files. */
export interface Week {
  readonly people: readonly {
    readonly handle: string;
    readonly name: string;
    readonly roles: readonly Role[];
    readonly zone: string;
    readonly lengthUnit: "in" | "mm";
    readonly truck: string | null;
    /** What they may do at its bench beside what everybody may; null is the usual. */
    readonly skills: readonly Skill[] | null;
  }[];
  readonly trucks: readonly { readonly name: string }[];
  readonly channels: readonly {
    readonly name: string;
    readonly purpose: "orders" | "bench" | "week" | "general" | "lead";
    readonly truck: string | null;
  }[];
  readonly players: readonly {
    readonly handle: string;
    readonly name: string;
    readonly hand: Hand;
    readonly region: string;
    readonly aliases: readonly string[];
    readonly restrictedCode: string | null;
    /** What differs from the default par; null is the default. */
    readonly balls: number | null;
    readonly hats: number | null;
    readonly gloves: number | null;
    readonly hatSize: string;
    readonly gloveSize: string;
    readonly note: string | null;
  }[];
  readonly events: readonly {
    readonly name: string;
    readonly course: string;
    readonly zone: string;
    readonly monday: string;
    readonly firstPracticeRound: string;
    readonly walkMin: number;
    readonly keepsListForPlay: boolean;
    readonly trucks: readonly { readonly truck: string; readonly arrivesAt: Instant; readonly rollOutAt: Instant }[];
    readonly open: readonly { readonly truck: string; readonly from: Instant; readonly to: Instant }[];
    readonly field: readonly string[];
    readonly teeTimes: readonly { readonly player: string; readonly kind: "range" | "practice" | "round"; readonly at: Instant }[];
  }[];
  readonly headModels: readonly (Omit<HeadModel, "id"> & { readonly restrictedCode: string | null })[];
  readonly sleeves: readonly Omit<SleeveModel, "id">[];
  readonly shafts: readonly Omit<ShaftModel, "id">[];
  readonly grips: readonly Omit<GripModel, "id">[];
  readonly weights: readonly Omit<WeightModel, "id">[];
  /** Balls, hats and gloves as they are counted: `ball`, `hat M`, `glove L left`. */
  readonly goods: readonly { readonly name: string }[];
  readonly places: readonly {
    readonly label: string;
    readonly kind: "drawer" | "mainRack" | "playerBin" | "homeBase" | "float";
    readonly truck: string | null;
    readonly player: string | null;
  }[];
  readonly heads: readonly {
    readonly serial: string;
    readonly model: string;
    readonly hand: Hand;
    readonly stampedLoftDeg: number;
    readonly soledLoftDeg: number;
    readonly designLieDeg: number;
    readonly soledFaceDeg: number;
    readonly bounceDeg: number | null;
    readonly massG: number;
    readonly measuredAt: Instant;
    readonly place: string;
    readonly truck: string | null;
  }[];
  /** Bends heads have had before. */
  readonly headBends: readonly (Bend & { readonly serial: string; readonly at: Instant; readonly by: string })[];
  /** Shafts prepared before, one by one. */
  readonly shaftPieces: readonly (Pick<ShaftPiece, "state" | "tipTrimMm" | "logo" | "cutLengthMm" | "place"> & {
    readonly model: string;
    readonly sleeve: string | null;
    readonly truck: string | null;
  })[];
  /** Counted parts: shafts, grips, sleeves, weights, goods. */
  readonly stock: readonly {
    readonly kind: "shaft" | "grip" | "sleeve" | "weight" | "goods";
    readonly model: string;
    readonly place: string;
    readonly truck: string | null;
    readonly quantity: number;
  }[];
  readonly specs: readonly {
    readonly player: string;
    readonly version: number;
    readonly validFrom: Instant;
    readonly by: string;
    readonly event: string | null;
    readonly where: string;
    readonly bag: Bag;
  }[];
  readonly wins: readonly { readonly player: string; readonly event: string; readonly wonOn: string }[];
  readonly markings: readonly { readonly player: string; readonly club: string; readonly text: string; readonly win: boolean }[];
  /** Orders in progress, as their reps typed them, with how far the bench has come. */
  readonly orders: readonly {
    readonly at: Instant;
    readonly channel: string;
    readonly by: string;
    readonly text: string;
    readonly kind: OrderKind;
    readonly progress: "draft" | "confirmed" | "started" | "gluedOn" | "finalCheck";
  }[];
}

/** One thing wrong in the files: nothing is loaded while there is any. */
export interface WeekFault {
  readonly file: string;
  /** Counting from 1 as an editor shows it; the header is row 1. Null when the file itself is at fault. */
  readonly row: number | null;
  readonly column: string | null;
  readonly written: string | null;
  readonly accepted: string;
}

export type WeekReading = { readonly kind: "week"; readonly week: Week } | { readonly kind: "faults"; readonly faults: readonly WeekFault[] };
