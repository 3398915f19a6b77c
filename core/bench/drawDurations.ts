import type { BenchModel, ModelJob, ModelStep } from "./benchModel.ts";
import type { Spreads } from "./benchTypes.ts";
import { jobStream } from "./jobStream.ts";
import { normalAbove, normalQuantile } from "./standardNormal.ts";

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
  spreads: Spreads,
  u: number,
  uJob: number,
): { readonly logFactor: number; readonly begun: ModelStep | null; readonly durationMs: number } {
  const begun = job.open.find((step) => !step.unattended && step.elapsedMs > 0) ?? null;
  const zJob = -normalQuantile(uJob);
  const both = Math.hypot(spreads.step, spreads.job);
  if (begun === null || both === 0) return { logFactor: spreads.job * zJob, begun: null, durationMs: 0 };
  const total = both * normalAbove(knownAbove(begun, 0, both), u);
  const logFactor = (spreads.job / both) ** 2 * total + ((spreads.job * spreads.step) / both) * zJob;
  return { logFactor, begun, durationMs: begun.medianMs * Math.exp(total) };
}

/**
 * Draws how long every unfinished step of the bench takes in all, in one sample.
 *
 *     hands-on: median · exp(σ_job·Z_job + σ_step·Z);   wait: max(floor, median · exp(σ_wait·Z))
 *
 * One Z_job a job, hands-on work only. A step begun is drawn from what is left of its distribution above the time spent,
 * exactly; with two hands-on steps begun in one job only the first tells of the job's factor. Every step has its own
 * place in the job's stream, finished or not, so that an estimate made later rests on the same luck.
 *
 * @param sample - counts from 0
 */
export function drawDurations(model: BenchModel, spreads: Spreads, seed: number, sample: number): void {
  for (const job of model.jobs) {
    const uniform = jobStream({ seed, sample, order: job.source.order, job: job.source.job });
    const pace = drawPace(job, spreads, uniform(), uniform());
    for (const step of job.steps) {
      const u = uniform();
      if (step === null) continue;
      const drawnMs = step.unattended ? drawOne(step, 0, spreads.wait, u) : drawOne(step, pace.logFactor, spreads.step, u);
      const durationMs = step === pace.begun ? pace.durationMs : drawnMs;
      step.durationMs = Math.ceil(Math.max(durationMs, step.floorMs, step.elapsedMs));
    }
  }
}
