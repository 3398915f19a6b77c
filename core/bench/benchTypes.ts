import type { ClubFamily, Id, Instant, OrderKind } from "../kinds.ts";

/** A place of work that holds so many clubs at once. */
export type Station = "bench" | "cutter" | "bonding" | "gripping" | "loftLie" | "scale" | "marking" | "walk";

/** What not every technician may do: sole work, bending a bonded wood, stamping. */
export const skills = ["grinding", "woodBending", "stamping"] as const;
export type Skill = (typeof skills)[number];

/**
 * One step of a route. `medianMin` is hands-on time, or the wait itself when `unattended`. A wait never takes a
 * technician, no place at its station (the club stands in a rack) and never less than `floorMin`, which comes from the
 * product's data sheet and is never learned.
 */
export interface RouteStep {
  readonly kind: StepKind;
  readonly medianMin: number;
  readonly unattended: boolean;
  readonly floorMin: number;
  readonly station: Station;
  /** Kinds of the same route that must be done first; a step with none may start at once. */
  readonly after: readonly StepKind[];
  /** Only a technician who has it does the step; absent or null is anybody. */
  readonly skill?: Skill | null;
  /** Minutes of the median that setting up takes: saved when the same technician did the same kind for the same order just before. */
  readonly setUpMin?: number;
}

export type StepKind =
  | "pullParts"
  | "tipPrepare"
  | "dryFit"
  | "bond"
  | "bondSet"
  | "gaugeHead"
  | "pullHead"
  | "layOutGrip"
  | "headOn"
  | "cut"
  | "dryWeigh"
  | "grip"
  | "gripSet"
  | "measure"
  | "sign"
  | "walk"
  | "removeOld"
  | "coolDown"
  | "turnFerrule"
  | "bend"
  | "turnSleeve"
  | "stampText"
  | "paintDry"
  | "soleWork"
  | "inspect";

/** A route with the two floors under "playable": minutes after bonding, and after gripping, before full swings. */
export interface Route {
  readonly steps: readonly RouteStep[];
  readonly playableAfterBondMin: number;
  readonly playableAfterGripMin: number;
}

/** How far the shaft of a build or a reshaft was prepared before. */
export const shaftStates = ["raw", "tipped", "sleeved", "used"] as const;
type ShaftState = (typeof shaftStates)[number];

/**
 * What a route is chosen by. `shaftState` is raw when absent; `sleeveOn` says of a used shaft that the sleeve wanted is still on it.
 */
export interface RouteQuestion {
  readonly kind: OrderKind;
  readonly family: ClubFamily;
  readonly adjustable: boolean;
  readonly shaftState?: ShaftState;
  readonly sleeveOn?: boolean;
}

/** Floors from data sheets, editable: the adhesive's and the grip method's. */
export interface WaitFloors {
  readonly adhesiveHandleMin: number;
  readonly adhesivePlayMin: number;
  readonly gripHandleMin: number;
  readonly gripPlayMin: number;
  readonly walkMin: number;
}

type StepState = "todo" | "running" | "paused" | "done" | "skipped";

/** A step as it stands on the bench. Times in epoch ms; `startedAt` is the latest start, `workedMs` what was worked before it, `person` who is at it. */
export interface BenchStep {
  readonly route: RouteStep;
  readonly state: StepState;
  readonly startedAt: Instant | null;
  readonly finishedAt: Instant | null;
  readonly workedMs: number;
  readonly person: Id<"person"> | null;
}

/** One club of one order in the queue. */
export interface BenchJob {
  readonly order: Id<"order">;
  readonly job: number;
  /** The kind of work its pace is learned by, such as `build driver`. */
  readonly work: string;
  readonly steps: readonly BenchStep[];
  readonly playableAfterBondMin: number;
  readonly playableAfterGripMin: number;
  /** Nothing starts before it: the club or the bag has yet to come in. */
  readonly releaseAt: Instant | null;
  readonly dueAt: Instant | null;
  /** Weight of a minute late: a player waiting on the range outranks a backup for Friday. */
  readonly weight: number;
  readonly held: boolean;
}

/** Names one step of the bench: an order, which of its clubs, the place among that club's steps. */
export interface StepRef {
  readonly order: Id<"order">;
  readonly job: number;
  readonly place: number;
}

/** Half-open interval of epoch ms. */
export interface OpenInterval {
  readonly from: Instant;
  readonly to: Instant;
}

/** Somebody signed on to the bench, with what they may do and when they are away. */
export interface Technician {
  readonly person: Id<"person">;
  readonly skills: readonly Skill[];
  readonly away: readonly OpenInterval[];
}

/** The whole workshop at one moment: what the estimate rests on, with the version it was read at. */
export interface BenchSnapshot {
  readonly version: number;
  readonly now: Instant;
  readonly technicians: readonly Technician[];
  readonly stations: Readonly<Record<Station, number>>;
  readonly open: readonly OpenInterval[];
  /** When the truck leaves: no promise crosses it. Null when it stays. */
  readonly rollOutAt: Instant | null;
  readonly jobs: readonly BenchJob[];
}

/** Spreads of the durations, as standard deviations of the logarithm. */
export interface Spreads {
  readonly step: number;
  readonly job: number;
  readonly wait: number;
}

/** When a club is in the player's hand and when it may take full swings; null when it is not before the truck leaves. */
export interface ReadyEstimate {
  readonly order: Id<"order">;
  readonly job: number;
  readonly likelyAt: Instant | null;
  readonly promiseAt: Instant | null;
  readonly playableAt: Instant | null;
  /** Share of samples finished by `dueAt`; null without one. */
  readonly chanceByDue: number | null;
}
