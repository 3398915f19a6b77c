import type { BenchModel, ModelJob, ModelStep } from "./benchModel.ts";
import { jobStream } from "./jobStream.ts";
import { drawStage } from "./learning/drawStage.ts";
import type { Pace, StagePace } from "./pace.ts";
import { normalAbove, normalQuantile } from "./standardNormal.ts";

/** A step's log pace in one sample: where it lies and how far it spreads. */
interface StepPace {
  readonly location: number;
  readonly spread: number;
}

/** The job that stands for what is learned in the stream of random numbers: no order has it. */
const LEARNED = -1;

/** Past four times its usual time a stage tells of a press that was forgotten, not of a slow day. */
const MOST_TOLD = Math.log(4);

const nameOf = ({ work, stage }: Pick<StagePace, "work" | "stage">): string => `${work}/${stage}`;

/** A whole number of a name, so that a stage keeps its luck whatever else is learned (FNV-1a, public domain). */
function numberOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < name.length; at++) hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193);
  return hash;
}

/** The paces of one sample, drawn once for all jobs: what is not known of a stage is not known of any of its jobs. */
function drawPaces(learned: Pace["learned"], seed: number, sample: number): ReadonlyMap<string, StepPace> {
  return new Map(
    learned.map((stage) => {
      const uniform = jobStream({ seed, sample, order: LEARNED, job: numberOf(nameOf(stage)) });
      return [nameOf(stage), drawStage(stage, uniform(), uniform())];
    }),
  );
}

/** How many standard deviations above its median a duration is known to be from the time already spent. */
function knownAbove(step: ModelStep, logFactor: number, spread: number): number {
  if (step.elapsedMs <= 0 || step.medianMs <= 0) return Number.NEGATIVE_INFINITY;
  return (Math.log(step.elapsedMs / step.medianMs) - logFactor) / spread;
}

function drawOne(step: ModelStep, logFactor: number, spread: number, u: number): number {
  if (spread <= 0) return step.medianMs * Math.exp(logFactor);
  const overFloor = step.elapsedMs > step.floorMs;
  const bound = overFloor ? knownAbove(step, logFactor, spread) : Number.NEGATIVE_INFINITY;
  return step.medianMs * Math.exp(logFactor + spread * normalAbove(bound, u));
}

/**
 * The job's log factor, and the duration of the hands-on step it has begun: a step that has taken long says that the
 * day is slow. The sum T of both deviations is drawn above what is known, then the job's share of it.
 */
function drawPace(
  job: ModelJob,
  jobSpread: number,
  paceOf: (step: ModelStep) => StepPace,
  u: { readonly step: number; readonly job: number },
): { readonly logFactor: number; readonly begun: ModelStep | null; readonly durationMs: number } {
  const begun = job.open.find((step) => !step.unattended && step.elapsedMs > 0) ?? null;
  const zJob = -normalQuantile(u.job);
  const { location, spread } = begun === null ? { location: 0, spread: 0 } : paceOf(begun);
  const both = Math.hypot(spread, jobSpread);
  if (begun === null || both === 0) return { logFactor: jobSpread * zJob, begun: null, durationMs: 0 };
  const total = both * normalAbove(knownAbove(begun, location, both), u.step);
  const logFactor = (jobSpread / both) ** 2 * Math.min(total, MOST_TOLD) + ((jobSpread * spread) / both) * zJob;
  return { logFactor, begun, durationMs: begun.medianMs * Math.exp(location + total) };
}

/**
 * Draws how long every unfinished step of the bench takes in all, in one sample.
 *
 *     hands-on: median · exp(μ_stage + σ_job·Z_job + σ_stage·Z);   wait: max(floor, median · exp(σ_wait·Z))
 *
 * μ_stage and σ_stage are drawn once a sample from what was learned of the stage; without that they are 0 and the fixed spread.
 * One Z_job a job, hands-on work only. A step begun is drawn from what is left of its distribution above the time spent,
 * exactly, but tells of the job's factor no more than four times the usual time would; with two hands-on steps begun in one job
 * only the first tells of it. Every step has its own place in the job's stream, finished or not, so that an estimate made later
 * rests on the same luck.
 *
 * @param sample - counts from 0
 */
export function drawDurations(model: BenchModel, pace: Pace, seed: number, sample: number): void {
  const { spreads } = pace;
  const onBench = pace.learned.filter(({ work }) => model.jobs.some(({ source }) => source.work === work));
  const learned = drawPaces(onBench, seed, sample);
  const fixed: StepPace = { location: 0, spread: spreads.step };
  for (const job of model.jobs) {
    const uniform = jobStream({ seed, sample, order: job.source.order, job: job.source.job });
    const paceOf = (step: ModelStep): StepPace => learned.get(`${job.source.work}/${step.stage}`) ?? fixed;
    const own = drawPace(job, spreads.job, paceOf, { step: uniform(), job: uniform() });
    for (const step of job.steps) {
      const u = uniform();
      if (step === null) continue;
      const { location, spread } = step.unattended ? { location: 0, spread: spreads.wait } : paceOf(step);
      const drawnMs = drawOne(step, step.unattended ? 0 : location + own.logFactor, spread, u);
      const durationMs = step === own.begun ? own.durationMs : drawnMs;
      step.durationMs = Math.ceil(Math.max(durationMs, step.floorMs, step.elapsedMs));
    }
  }
}
