import type { ClubFamily, Id } from "../../../core/kinds.ts";
import type { NamedPlayer } from "../reading.ts";

export const countedKinds = ["shaft", "grip", "sleeve", "weight", "goods"] as const;
export type CountedKind = (typeof countedKinds)[number];

/** A model of counted parts. `family` is that of a sleeve, null for all else. */
export interface KnownPart {
  readonly id: Id<"partModel">;
  readonly kind: CountedKind;
  readonly name: string;
  readonly code: string | null;
  readonly family: string | null;
}

export interface KnownHeadModel {
  readonly id: Id<"partModel">;
  readonly name: string;
  readonly code: string | null;
  readonly family: ClubFamily;
  readonly sleeveFamily: string | null;
  readonly grind: string | null;
}

/** A place of the truck; `shown` is its label, without the name of a restricted player. */
export interface KnownPlace {
  readonly id: Id<"place">;
  readonly kind: "drawer" | "mainRack" | "playerBin" | "homeBase" | "float";
  readonly label: string;
  readonly shown: string;
  readonly player: NamedPlayer | null;
}

/** What a text about stock is read against. */
export interface StockKnown {
  readonly parts: readonly KnownPart[];
  readonly headModels: readonly KnownHeadModel[];
  readonly places: readonly KnownPlace[];
  readonly serials: readonly { readonly serial: string; readonly retired: boolean }[];
}

/** One thing that cannot be taken as written; `row` counts the lines of the text from 1. */
export interface StockFault {
  readonly row: number;
  readonly column: string;
  readonly written: string | null;
  readonly accepted: string;
  readonly guess: string | null;
}

/** A model's name as it may be shown: its code word while it is unreleased. */
export const shownName = ({ name, code }: { readonly name: string; readonly code: string | null }): string => code ?? name;

/** So many of a counted part for a place. */
export interface PartQuantity {
  readonly part: KnownPart;
  readonly place: KnownPlace;
  readonly quantity: number;
}
