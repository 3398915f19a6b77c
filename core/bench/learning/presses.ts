import type { Id, Instant } from "../../kinds.ts";
import type { RouteStep } from "../benchTypes.ts";
import type { Stage } from "../pace.ts";

/** What somebody pressed at the bench. */
export type PressKind = "start" | "glueOn" | "done" | "checked" | "pause" | "resume" | "handBack";

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
  /** √(Σm²)/Σm of the stage's hands-on medians m: a stage of many steps varies less than one step. */
  readonly spreadShare: number;
}
