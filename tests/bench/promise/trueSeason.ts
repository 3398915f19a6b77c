import { type TrueKind, type TrueStep, trueKinds } from "./trueKinds.ts";

/**
 * A season of a truck as it truly went, for holding promises against: nothing of the program is used or known here. How long steps
 * take is hidden from the forecaster, who gets the presses only.
 */

export interface TruePress {
  readonly press: "start" | "glueOn" | "done" | "checked";
  readonly person: number;
  /** Minutes since the season began. */
  readonly atMin: number;
}

export interface TrueJob {
  readonly kind: string;
  readonly startMin: number;
  /** Minutes from the start until the player has it. */
  readonly inHandMin: number;
  readonly presses: readonly TruePress[];
}

export interface TrueSeason {
  readonly drift: boolean;
  /** From and to in minutes. */
  readonly open: readonly (readonly [number, number])[];
  readonly jobs: readonly TrueJob[];
}

const JOBS = 130;
const PEOPLE = 3;
const DAY_MIN = 1440;
const WALK_MIN = 2;
/** Opening hours of a day with two breaks, in minutes after midnight. */
const hours: readonly (readonly [number, number])[] = [
  [420, 600],
  [615, 745],
  [785, 930],
  [940, 1110],
];

/** Spreads of the truth, of natural logarithms. */
const truth = { book: 0.2, person: 0.07, day: 0.06, job: 0.06, wait: 0.1, step: 0.22, rareStep: 0.45, rareShare: 0.1, drift: 0.3 };
/** Shares of jobs whose presses go wrong in one way. */
const wrong = { noGlueOn: 0.15, noChecked: 0.04, twoStarts: 0.06, doneLate: 0.04, doneAtCheck: 0.05, atSupper: 0.03 };

/** Uniform numbers above 0 and below 1: a counter of 32 bits, mixed. */
function uniforms(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return (((mixed ^ (mixed >>> 15)) >>> 0) + 0.5) / 4294967296;
  };
}

class Luck {
  readonly uniform: () => number;
  constructor(seed: number) {
    this.uniform = uniforms(seed);
  }

  normal(): number {
    return Math.sqrt(-2 * Math.log(this.uniform())) * Math.cos(2 * Math.PI * this.uniform());
  }

  factor(spread: number): number {
    return Math.exp(spread * this.normal());
  }

  happens(share: number): boolean {
    return this.uniform() < share;
  }
}

interface Played {
  readonly endOf: ReadonlyMap<string, number>;
  readonly startMin: number;
}

type Open = TrueSeason["open"];

/** When a hand can begin a step that should take so long: it is not begun shortly before closing. */
function nextStart(open: Open, atMin: number, usualMin: number): number {
  for (const [from, to] of open) {
    const at = Math.max(from, atMin);
    if (at + usualMin <= to) return at;
  }
  return atMin;
}

/** One technician at one job: the first step in the list that can be done; during a wait what the list allows. */
function play(steps: readonly TrueStep[], minutesOf: ReadonlyMap<string, number>, open: Open, arrivalMin: number): Played {
  const endOf = new Map<string, number>();
  const readyAt = (one: TrueStep): number => Math.max(arrivalMin, ...one.after.map((name) => endOf.get(name) ?? Number.POSITIVE_INFINITY));
  let handsMin = arrivalMin;
  let startMin = Number.POSITIVE_INFINITY;
  while (endOf.size < steps.length) {
    const todo = steps.filter(({ name }) => !endOf.has(name)).sort((one, other) => readyAt(one) - readyAt(other));
    const waiting = todo.find((one) => one.sheet !== undefined && Number.isFinite(readyAt(one)));
    if (waiting !== undefined) {
      endOf.set(waiting.name, readyAt(waiting) + (minutesOf.get(waiting.name) ?? 0));
      continue;
    }
    const now = steps.find((one) => todo.includes(one) && readyAt(one) <= handsMin) ?? todo[0];
    if (now === undefined) break;
    const begin = nextStart(open, Math.max(handsMin, readyAt(now)), now.minutes);
    startMin = Math.min(startMin, begin);
    handsMin = begin + (minutesOf.get(now.name) ?? 0);
    endOf.set(now.name, handsMin);
  }
  return { endOf, startMin };
}

/** How long each step of a job truly takes: its hidden minutes, the pace of the job, and luck with heavier tails than a normal one. */
function trueMinutes(kind: TrueKind, book: ReadonlyMap<string, number>, pace: number, luck: Luck): ReadonlyMap<string, number> {
  return new Map(
    kind.steps.map((one) => {
      if (one.sheet !== undefined) return [one.name, Math.max(one.sheet, one.sheet * luck.factor(truth.wait))] as const;
      const noise = luck.factor(luck.happens(truth.rareShare) ? truth.rareStep : truth.step);
      return [one.name, one.minutes * (book.get(`${kind.name}/${one.name}`) ?? 1) * pace * noise] as const;
    }),
  );
}

/** The presses of a job as they came in: most of them true. */
function pressesOf(kind: TrueKind, played: Played, person: number, luck: Luck): readonly TruePress[] {
  const last = (part: TrueStep["part"]): number =>
    Math.max(...kind.steps.filter((one) => one.part === part && one.sheet === undefined).map(({ name }) => played.endOf.get(name) ?? 0));
  const glued = kind.steps.some(({ part }) => part === "glue");
  const checkedMin = last("check");
  const trueDone = last("bench");
  const doneMin = luck.happens(wrong.atSupper)
    ? trueDone + 60 + 400 * luck.uniform()
    : luck.happens(wrong.doneAtCheck)
      ? checkedMin - 0.1
      : luck.happens(wrong.doneLate)
        ? trueDone + 8 * luck.uniform()
        : trueDone;
  const presses: TruePress[] = [{ press: "start", person, atMin: played.startMin }];
  if (luck.happens(wrong.twoStarts)) presses.push({ press: "start", person, atMin: played.startMin + 3 * luck.uniform() });
  if (glued && !luck.happens(wrong.noGlueOn)) presses.push({ press: "glueOn", person, atMin: last("glue") });
  presses.push({ press: "done", person, atMin: doneMin });
  if (!luck.happens(wrong.noChecked)) presses.push({ press: "checked", person, atMin: Math.max(checkedMin, doneMin) });
  return presses;
}

function kindBy(u: number): TrueKind {
  let below = 0;
  for (const kind of trueKinds) {
    below += kind.share;
    if (u < below) return kind;
  }
  return { name: "none", share: 0, steps: [] };
}

/** The opening hours of so many days. */
const openFor = (days: number): Open =>
  Array.from({ length: days }, (_, day) => hours.map(([from, to]) => [day * DAY_MIN + from, day * DAY_MIN + to] as const)).flat();

/**
 * Plays a season of 130 jobs, one after another, by three people.
 *
 * @param seed - the same seed gives the same season
 * @param drift - whether everybody gets 30 % quicker or slower over the season
 */
export function trueSeason(seed: number, drift: boolean): TrueSeason {
  const luck = new Luck(seed);
  const book = new Map(trueKinds.flatMap(({ name, steps }) => steps.map((one) => [`${name}/${one.name}`, luck.factor(truth.book)] as const)));
  const people = Array.from({ length: PEOPLE }, () => luck.factor(truth.person));
  const driftPerJob = drift ? (luck.happens(0.5) ? 1 : -1) * (truth.drift / JOBS) : 0;
  const open = openFor(JOBS);
  const jobs: TrueJob[] = [];
  let dayFactor = 1;
  let day = -1;
  let freeMin = 0;
  for (let at = 0; at < JOBS; at++) {
    const kind = kindBy(luck.uniform());
    const person = Math.floor(luck.uniform() * PEOPLE);
    const startMin = nextStart(open, freeMin + 40 * luck.uniform() ** 2, kind.steps[0]?.minutes ?? 0);
    if (Math.floor(startMin / DAY_MIN) !== day) {
      day = Math.floor(startMin / DAY_MIN);
      dayFactor = luck.factor(truth.day);
    }
    const pace = (people[person] ?? 1) * dayFactor * luck.factor(truth.job) * Math.exp(driftPerJob * at);
    const played = play(kind.steps, trueMinutes(kind, book, pace, luck), open, startMin);
    const signedMin = Math.max(...played.endOf.values());
    const inHandMin = signedMin + Math.max(WALK_MIN, WALK_MIN * luck.factor(truth.wait)) - startMin;
    jobs.push({ kind: kind.name, startMin, inHandMin, presses: pressesOf(kind, played, person, luck) });
    freeMin = signedMin;
  }
  return { drift, open: open.slice(0, (day + 2) * hours.length), jobs };
}
