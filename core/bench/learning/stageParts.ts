import type { RouteStep } from "../benchTypes.ts";
import { defaultSpreads, type Stage, stages } from "../pace.ts";
import { stagesOf } from "../stageOf.ts";
import { normalUpperTail } from "../standardNormal.ts";
import { predecessorPlaces, workableOrder } from "../stepOrder.ts";

/** What bounds the time up to the end of a part: minutes, the hands-on medians on the way there, squares of these and of its waits. */
export interface Way {
  readonly endMin: number;
  readonly workMin: number;
  readonly workSquares: number;
  readonly waitSquares: number;
}

/** A hands-on step of a stage, or a wait that runs in it. `way` changes with each walk. */
export interface StagePart {
  readonly kind: RouteStep["kind"];
  readonly isWait: boolean;
  readonly minutes: number;
  readonly setUpMin: number;
  readonly before: readonly StagePart[];
  way: Way | null;
}

/**
 * The minutes that a wait takes on average: it spreads about its planned length, and is never shorter than its floor.
 *
 *     E max(floor, m·e^{σZ}) = floor·Φ(a) + m·e^{σ²/2}·Φ(σ − a),   a = ln(floor/m)/σ
 */
function meanWaitMin({ medianMin, floorMin }: RouteStep): number {
  const planned = Math.max(medianMin, floorMin);
  const sigma = defaultSpreads.wait;
  if (floorMin <= 0) return planned * Math.exp(sigma ** 2 / 2);
  const a = Math.log(floorMin / planned) / sigma;
  return floorMin * (1 - normalUpperTail(a)) + planned * Math.exp(sigma ** 2 / 2) * normalUpperTail(a - sigma);
}

/**
 * The stage each step holds up: hands-on work its own, a wait the first that cannot end without it. Done is pressed when the
 * measuring can begin, so that what measuring waits for belongs to `toDone`. Null holds up nothing, such as the walk.
 */
function stagesHeldUp(route: readonly RouteStep[], before: readonly (readonly number[])[], order: readonly number[]): readonly (Stage | null)[] {
  const own = stagesOf(route);
  const heldUp = own.map((stage) => (stage === null ? stages.length : stages.indexOf(stage)));
  for (const place of order.toReversed()) {
    const reached = route[place]?.kind === "measure" ? stages.indexOf("toDone") : (heldUp[place] ?? stages.length);
    for (const earlier of before[place] ?? []) {
      if (own[earlier] === null) heldUp[earlier] = Math.min(heldUp[earlier] ?? reached, reached);
    }
  }
  return heldUp.map((at) => stages[at] ?? null);
}

/**
 * The parts of one club's route stage by stage, each after all it waits for. What lies before a stage is done; a wait for it begins
 * with the stage's first press.
 *
 * @throws {DomainError} `route-has-a-cycle` when steps wait for each other
 */
export function stageParts(route: readonly RouteStep[]): Readonly<Record<Stage, readonly StagePart[]>> {
  const before = predecessorPlaces(route);
  const order = workableOrder(route);
  const heldUp = stagesHeldUp(route, before, order);
  const partsOf = (stage: Stage): readonly StagePart[] => {
    const parts = new Map<number, StagePart>();
    for (const place of order) {
      const step = route[place];
      if (step === undefined || heldUp[place] !== stage) continue;
      parts.set(place, {
        kind: step.kind,
        isWait: step.unattended,
        minutes: step.unattended ? meanWaitMin(step) : step.medianMin,
        setUpMin: step.setUpMin ?? 0,
        before: (before[place] ?? []).flatMap((earlier) => parts.get(earlier) ?? []),
        way: null,
      });
    }
    return [...parts.values()];
  };
  return { toGlue: partsOf("toGlue"), toDone: partsOf("toDone"), check: partsOf("check") };
}
