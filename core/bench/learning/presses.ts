import type { Id, Instant } from "../../kinds.ts";
import type { RouteStep } from "../benchTypes.ts";
import type { Stage } from "../pace.ts";

/** What somebody pressed at the bench. */
export const pressKinds = ["start", "glueOn", "done", "checked", "pause", "resume", "handBack"] as const;
export type PressKind = (typeof pressKinds)[number];

export interface BenchPress {
  readonly order: Id<"order">;
  readonly press: PressKind;
  readonly person: Id<"person">;
  readonly at: Instant;
}

/** An order whose presses tell something: the routes of its clubs. */
export interface PressedOrder {
  readonly order: Id<"order">;
  /** What its pace is learned by, such as `build driver`. */
  readonly work: string;
  readonly clubs: readonly (readonly RouteStep[])[];
}

/** One stage of one order as its presses showed it. */
export interface StageSeen {
  readonly order: Id<"order">;
  readonly work: string;
  readonly stage: Stage;
  /** Logarithm of the factor on the hands-on medians that explains the time seen. */
  readonly logPace: number;
  /** √(Σm²)/Σm of the steps m that bound the stage: many steps vary less than one. A wait that bounds it too counts by its own spread. */
  readonly spreadShare: number;
}
