import type { OpenInterval } from "../benchTypes.ts";
import type { Stage } from "../pace.ts";
import type { BenchPress, PressedOrder, PressKind, StageSeen } from "./presses.ts";
import { stageMedians, stageMinutes } from "./stageMinutes.ts";

const MS_PER_MIN = 60_000;
/** Less than a quarter or more than four times the usual is a wrong press or a forgotten one. */
const FASTEST = 0.25;
const SLOWEST = 4;
const HALVINGS = 40;

/** The presses that begin and end each stage; without glue the stage `toDone` begins with Start. */
function boundsOf(glued: boolean): readonly { readonly stage: Stage; readonly from: PressKind; readonly to: PressKind }[] {
  const check = { stage: "check", from: "done", to: "checked" } as const;
  return glued
    ? [{ stage: "toGlue", from: "start", to: "glueOn" }, { stage: "toDone", from: "glueOn", to: "done" }, check]
    : [{ stage: "toDone", from: "start", to: "done" }, check];
}

/** The pace at which a stage takes the minutes seen, or null when waiting alone explains them. */
function paceOf(clubs: PressedOrder["clubs"], stage: Stage, seenMin: number): number | null {
  let low = FASTEST / 2;
  let high = SLOWEST * 2;
  if (stageMinutes(clubs, stage, low) >= seenMin || stageMinutes(clubs, stage, high) <= seenMin) return null;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = Math.sqrt(low * high);
    if (stageMinutes(clubs, stage, middle) < seenMin) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

function seenOf(order: PressedOrder, stage: Stage, seenMin: number): readonly StageSeen[] {
  const usualMin = stageMinutes(order.clubs, stage, 1);
  if (!(usualMin > 0) || seenMin < FASTEST * usualMin || seenMin > SLOWEST * usualMin) return [];
  const medians = stageMedians(order.clubs, stage);
  const pace = paceOf(order.clubs, stage, seenMin);
  if (pace === null) return [];
  const spreadShare = Math.sqrt(medians.reduce((sum, one) => sum + one * one, 0)) / medians.reduce((sum, one) => sum + one, 0);
  return [{ order: order.order, work: order.work, stage, logPace: Math.log(pace), spreadShare }];
}

/**
 * What the presses tell of the pace of work, stage by stage.
 *
 * A stage counts when both presses that bound it are there, by the same person, who pressed nothing else between them, on this order
 * or another; when the workshop did not close in between; and when the time lies within a quarter and four times the usual, so that wrong
 * presses and those made up for at supper are left out. Of a press made twice the first counts. A missing press is normal: only the
 * stages that it bounds are not seen. The time is explained by the pace of the hands-on work alone, waits at their planned length; where
 * waiting explains all of it nothing is learned.
 *
 * @param orders - the orders with the routes they were built by
 * @param presses - all presses of the shop, in any order
 * @param open - opening hours, those that are over included
 * @returns the stages that count, in the order of the orders
 */
export function stagesSeen(orders: readonly PressedOrder[], presses: readonly BenchPress[], open: readonly OpenInterval[]): readonly StageSeen[] {
  const byPerson = new Map<number, BenchPress[]>();
  const byOrder = new Map<number, BenchPress[]>();
  for (const press of presses.toSorted((a, b) => a.at - b.at)) {
    byPerson.set(press.person, [...(byPerson.get(press.person) ?? []), press]);
    byOrder.set(press.order, [...(byOrder.get(press.order) ?? []), press]);
  }
  return orders.flatMap((order) => {
    const own = byOrder.get(order.order) ?? [];
    const glued = order.clubs.some((route) => route.some(({ kind }) => kind === "bondSet"));
    return boundsOf(glued).flatMap(({ stage, from, to }) => {
      const begun = own.find(({ press }) => press === from);
      const ended = own.find(({ press }) => press === to);
      if (begun === undefined || ended === undefined || begun.person !== ended.person || ended.at <= begun.at) return [];
      const between = (byPerson.get(begun.person) ?? []).some(
        ({ at, press, order: other }) => at >= begun.at && at <= ended.at && !(other === order.order && (press === from || press === to)),
      );
      const inOneStretch = open.some((hours) => hours.from <= begun.at && ended.at <= hours.to);
      return between || !inOneStretch ? [] : seenOf(order, stage, (ended.at - begun.at) / MS_PER_MIN);
    });
  });
}
