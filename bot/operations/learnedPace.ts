import type { OpenInterval } from "../../core/bench/benchTypes.ts";
import { learnPace } from "../../core/bench/learning/learnPace.ts";
import type { PressedOrder } from "../../core/bench/learning/presses.ts";
import { stagesSeen } from "../../core/bench/learning/stagesSeen.ts";
import { defaultPace, defaultSpreads, type Pace } from "../../core/bench/pace.ts";
import { instant } from "../../core/kinds.ts";
import { allPresses, lastPressId, pressedOrders } from "../../db/repositories/benchPresses.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { allTrucks, openingsFrom } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";
import { workOf } from "./benchExtra.ts";

/** The routes an order was built by, as planned: what was done again is no part of it. */
function pressedOrder(reader: Reader, order: OrderRow): PressedOrder {
  const sheets = sheetsOf(reader, order);
  const clubs = sheets.map(({ steps }) =>
    steps.filter(({ repeatsStepId, state }) => repeatsStepId === null && state !== "skipped").map(({ route }) => route),
  );
  const [first] = sheets;
  return { order: order.id, work: first === undefined ? order.kind : workOf(order.kind, first.club), clubs };
}

/** A season; older work tells little of how fast these people are. */
const MOST_ORDERS = 200;

function learn(reader: Reader): Pace {
  const presses = allPresses(reader).map(({ orderId, press, personId, at }) => ({ order: orderId, press, person: personId, at }));
  const newest = [...new Set(presses.map(({ order }) => order))].slice(-MOST_ORDERS);
  const orders = pressedOrders(reader, newest);
  const seen = allTrucks(reader).flatMap(({ id }) => {
    const open: readonly OpenInterval[] = openingsFrom(reader, id, instant(0));
    const own = orders.filter(({ truckId }) => truckId === id).map((order) => pressedOrder(reader, order));
    return stagesSeen(own, presses, open);
  });
  return learnPace(seen, defaultSpreads);
}

const known = new WeakMap<object, { readonly lastPress: number; readonly pace: Pace }>();

/** What the presses so far have taught of the pace of work; made anew after each press. */
export function learnedPace(reader: Reader): Pace {
  const lastPress = lastPressId(reader);
  if (lastPress === 0) {
    return defaultPace;
  }
  const before = known.get(reader);
  if (before?.lastPress === lastPress) {
    return before.pace;
  }
  const pace = learn(reader);
  known.set(reader, { lastPress, pace });
  return pace;
}
