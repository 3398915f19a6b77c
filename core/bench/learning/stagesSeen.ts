import { finiteNumbers } from "../../quantity/finiteNumbers.ts";
import { listOf } from "../../quantity/listOf.ts";
import { oneOf } from "../../quantity/oneOf.ts";
import type { OpenInterval } from "../benchTypes.ts";
import { checkedRoute } from "../checkedBench.ts";
import type { Stage } from "../pace.ts";
import { paceOfStage } from "./paceOfStage.ts";
import { type BenchPress, type PressedOrder, type PressKind, pressKinds, type StageSeen } from "./presses.ts";
import { stageParts } from "./stageParts.ts";

const MS_PER_MIN = 60_000;
const MOST = 1_000_000;

interface Bounds {
  readonly stage: Stage;
  readonly from: PressKind;
  readonly to: PressKind;
}

const check: Bounds = { stage: "check", from: "done", to: "checked" };
const glued: readonly Bounds[] = [{ stage: "toGlue", from: "start", to: "glueOn" }, { stage: "toDone", from: "glueOn", to: "done" }, check];
const unglued: readonly Bounds[] = [{ stage: "toDone", from: "start", to: "done" }, check];

const boundsOf = ({ clubs }: PressedOrder): readonly Bounds[] =>
  clubs.some((route) => route.some(({ kind }) => kind === "bondSet")) ? glued : unglued;

/** Presses by what they have in common, earliest first. */
function sorted(presses: readonly BenchPress[], keyOf: (press: BenchPress) => number): ReadonlyMap<number, readonly BenchPress[]> {
  const groups = new Map<number, BenchPress[]>();
  for (const press of presses.toSorted((one, other) => one.at - other.at)) {
    const group = groups.get(keyOf(press));
    if (group === undefined) groups.set(keyOf(press), [press]);
    else group.push(press);
  }
  return groups;
}

function checked(orders: readonly PressedOrder[], presses: readonly BenchPress[], open: readonly OpenInterval[]): void {
  listOf(orders, { field: "orders", min: 0, max: MOST });
  listOf(presses, { field: "presses", min: 0, max: MOST });
  finiteNumbers(presses, "presses");
  finiteNumbers(open, "open");
  for (const { press } of presses) oneOf(press, pressKinds, "press");
  for (const { order, clubs } of orders) {
    finiteNumbers(order, "order");
    for (const steps of clubs) checkedRoute({ steps, playableAfterBondMin: 0, playableAfterGripMin: 0 });
  }
}

/** Presses that take the order out of the technician's hands for a while. */
const interruptions: readonly PressKind[] = ["pause", "resume", "handBack"];

/**
 * What the presses tell of the pace of work, stage by stage.
 *
 *     T(x) = time seen;   ln x is the log pace
 *
 * T(x) is the time one technician needs for the stage with hands-on medians times x and waits at their average length. A stage counts when
 * - both presses that bound it are there, by the same person; of a press made twice the first counts;
 * - that person pressed nothing on another order in between, and nobody paused or handed back this one;
 * - the workshop did not close in between, over lunch or over night;
 * - x lies within a quarter and four: else a press was forgotten, made up for at supper, or wrong;
 * - work bounds the time enough: waits are never learned, and a stage that is planned to be mostly waiting tells nothing.
 *
 * A missing press is normal: only the stages that it bounds are not seen. T(x) is met to 1e-9 minutes.
 *
 * @param orders - the orders with the routes they were built by, in minutes
 * @param presses - all presses of the shop in epoch ms, in any order
 * @param open - opening hours in epoch ms, those that are over included
 * @returns the stages that count, in the order of the orders
 * @throws {DomainError} `quantity-out-of-range` when a number cannot be; `quantity-unreadable` when a press is not known; `route-has-a-cycle`
 * @see tests/core/bench/learning/stagesSeen.test.ts, where each rule is shown
 */
export function stagesSeen(orders: readonly PressedOrder[], presses: readonly BenchPress[], open: readonly OpenInterval[]): readonly StageSeen[] {
  checked(orders, presses, open);
  const ofPerson = sorted(presses, ({ person }) => person);
  const ofOrder = sorted(presses, ({ order }) => order);
  return orders.flatMap((one) => {
    const { order, work, clubs } = one;
    const own = ofOrder.get(order) ?? [];
    const parts = own.length < 2 ? [] : clubs.map(stageParts);
    return boundsOf(one).flatMap(({ stage, from, to }): readonly StageSeen[] => {
      const begun = own.find(({ press }) => press === from);
      const ended = own.find(({ press }) => press === to);
      if (begun === undefined || ended === undefined || begun.person !== ended.person) return [];
      const between = ({ at }: BenchPress): boolean => at > begun.at && at < ended.at;
      const elsewhere = (ofPerson.get(begun.person) ?? []).some((press) => press.order !== order && between(press));
      const interrupted = own.some((press) => interruptions.includes(press.press) && between(press));
      const inOneStretch = open.some((hours) => hours.from <= begun.at && ended.at <= hours.to);
      if (elsewhere || interrupted || !inOneStretch) return [];
      const told = paceOfStage(
        parts.map((club) => club[stage]),
        (ended.at - begun.at) / MS_PER_MIN,
      );
      return told === null ? [] : [{ order, work, stage, ...told }];
    });
  });
}
