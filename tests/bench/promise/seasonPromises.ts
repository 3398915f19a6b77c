import type { OpenInterval, Route, RouteQuestion } from "../../../core/bench/benchTypes.ts";
import { learnPace } from "../../../core/bench/learning/learnPace.ts";
import type { BenchPress, PressedOrder, StageSeen } from "../../../core/bench/learning/presses.ts";
import { stagesSeen } from "../../../core/bench/learning/stagesSeen.ts";
import { defaultSpreads, type Pace } from "../../../core/bench/pace.ts";
import { readyTimes } from "../../../core/bench/readyTimes.ts";
import { defaultFloors, routeFor } from "../../../core/bench/routes.ts";
import { type Instant, id, instant } from "../../../core/kinds.ts";
import { benchJob, benchWith, MIN, now } from "../../core/bench/benchBuilders.ts";
import { plugInPace } from "./plugInPace.ts";
import type { TrueJob, TrueSeason } from "./trueSeason.ts";

const SAMPLES = 400;
/** Promises are made from the job after this many on. */
const FIRST_JOBS = 10;
/** A job asked for later than this before the evening may run over night; minutes late are then no measure. */
const BEFORE_EVENING_MIN = 120;
const DAY_MIN = 1440;
const EVENING_MIN = 1110;

/** A promise held against what came. Minutes from the question; `rank` is the forecast probability of being as early as it was. */
export interface Kept {
  /** How many jobs were done before. */
  readonly jobsBefore: number;
  readonly truthMin: number;
  readonly likelyMin: number;
  readonly promiseMin: number;
  readonly rank: number;
  readonly sameDay: boolean;
}

export interface SeasonPromises {
  readonly learned: readonly Kept[];
  readonly plugIn: readonly Kept[];
  /** Nothing learned: the fixed spreads. */
  readonly fixed: readonly Kept[];
  readonly jobSpread: number;
  readonly stagesSeen: number;
}

const question: Readonly<Record<string, RouteQuestion>> = {
  driver: { kind: "build", family: "driver", adjustable: true },
  iron: { kind: "build", family: "iron", adjustable: false },
  "bonded wood": { kind: "build", family: "fairway", adjustable: false },
  swap: { kind: "swap", family: "driver", adjustable: true },
  regrip: { kind: "regrip", family: "iron", adjustable: false },
  bend: { kind: "bend", family: "iron", adjustable: false },
};

interface BookJob {
  readonly work: string;
  readonly route: Route;
}

const bookOf = new Map(
  Object.entries(question).map(([kind, asked]): readonly [string, BookJob] => [
    kind,
    { work: `${asked.kind} ${asked.family}`, route: routeFor(asked, defaultFloors) },
  ]),
);

const momentOf = (minutes: number): Instant => instant(now + Math.round(minutes * MIN));

/** The forecast of one job on an empty bench with one technician, as it is made when it is asked for. */
function keptBy(pace: Pace, job: TrueJob, at: number, open: readonly OpenInterval[]): readonly Kept[] {
  const book = bookOf.get(job.kind);
  if (book === undefined) return [];
  const asked = momentOf(job.startMin);
  const inHandAt = instant(asked + Math.round(job.inHandMin * MIN));
  const snapshot = benchWith([benchJob(at + 1, book.route, { work: book.work, dueAt: inHandAt })], { now: asked, open });
  const [ready] = readyTimes({ snapshot, pace, seed: at, samples: SAMPLES });
  if (ready?.likelyAt == null || ready.promiseAt === null || ready.chanceByDue === null) return [];
  return [
    {
      jobsBefore: at,
      truthMin: job.inHandMin,
      likelyMin: (ready.likelyAt - asked) / MIN,
      promiseMin: (ready.promiseAt - asked) / MIN,
      rank: ready.chanceByDue,
      sameDay: (job.startMin % DAY_MIN) + BEFORE_EVENING_MIN <= EVENING_MIN,
    },
  ];
}

function seenIn(season: TrueSeason, open: readonly OpenInterval[]): readonly StageSeen[] {
  const orders = season.jobs.flatMap(({ kind }, at): readonly PressedOrder[] => {
    const book = bookOf.get(kind);
    return book === undefined ? [] : [{ order: id<"order">(at + 1), work: book.work, clubs: [book.route.steps] }];
  });
  const presses = season.jobs.flatMap((job, at) =>
    job.presses.map(
      ({ press, person, atMin }): BenchPress => ({ order: id<"order">(at + 1), press, person: id<"person">(person + 1), at: momentOf(atMin) }),
    ),
  );
  return stagesSeen(orders, presses, open);
}

/**
 * Promises the next job of a season after each job beyond the tenth, from the presses until then.
 *
 * Jobs of a season do not overlap, so that what is seen of one does not change with the presses of later ones: the presses are read once.
 */
export function seasonPromises(season: TrueSeason): SeasonPromises {
  const open = season.open.map(([from, to]) => ({ from: momentOf(from), to: momentOf(to) }));
  const seen = seenIn(season, open);
  const fixedPace: Pace = { spreads: defaultSpreads, learned: [] };
  const rows = season.jobs.flatMap((job, at) => {
    if (at < FIRST_JOBS) return [];
    const before = seen.filter(({ order }) => order <= at);
    const forecast = (pace: Pace): readonly Kept[] => keptBy(pace, job, at, open);
    return [{ learned: forecast(learnPace(before, defaultSpreads)), plugIn: forecast(plugInPace(before)), fixed: forecast(fixedPace) }];
  });
  return {
    learned: rows.flatMap(({ learned }) => learned),
    plugIn: rows.flatMap(({ plugIn }) => plugIn),
    fixed: rows.flatMap(({ fixed }) => fixed),
    jobSpread: learnPace(seen, defaultSpreads).spreads.job,
    stagesSeen: seen.length,
  };
}
