import { openStates } from "../../db/repositories/orders.ts";
import { buildOrder } from "../../db/schema/orders.ts";
import { type JoinedWeek, joinedWeek, type Running } from "../support/platform/joinedWeek.ts";
import { readPost } from "../support/platform/readPost.ts";
import type { Said } from "../support/platform/store.ts";
import { type SoakFigures, soakFigures } from "./soakChecks.ts";
import { type Dice, diceOf, someFault } from "./soakFaults.ts";
import { addWeeks } from "./soakWeeks.ts";
import { unsettled } from "./unsettled.ts";

export interface SoakPlan {
  readonly orders: number;
  readonly weeks: number;
  readonly burst: number;
  readonly seed: number;
  readonly report?: (line: string) => void;
}

const players = ["oxtoby", "quarrie", "toll", "halloway", "wexcombe", "pellwether", "dravick", "brandlow", "ambrelle", "castabel"];
const clubs = ["driver", "driver", "3w", "7i", "9i", "pw"];
const CHANNEL = "plover-orders";
const A_WEEK_MIN = 7 * 24 * 60;
/** Longer than the outbox may put a post off. */
const BURST_PATIENCE_MS = 6 * 60_000;
const TICK_MS = 1500;
const LOOK_MS = 100;

interface Soak {
  readonly week: JoinedWeek;
  readonly dice: Dice;
  readonly said: Said[];
  readonly confirmedBy: Set<string>;
  running: Running;
  lives: number;
}

/**
 * Orders by the dozen in a chat that fails about one request in twelve, drops its line and delivers twice, to a bot that
 * is stopped and killed in between; then everything is counted.
 */
export async function soak({
  orders,
  weeks,
  burst,
  seed,
  report,
}: SoakPlan): Promise<SoakFigures & { readonly met: ReadonlyMap<string, number>; readonly lives: number }> {
  const week = await joinedWeek();
  const met = new Map<string, number>();
  const dice = diceOf(seed);
  try {
    addWeeks(week.db, weeks - 1);
    const soaking: Soak = { week, dice, said: [], confirmedBy: new Set(), running: week.start(), lives: 1 };
    await soaking.running.entered;
    week.platform.faults.always(someFault(dice, met));
    const bursts = Math.ceil(orders / burst);
    const perWeek = Math.ceil(bursts / weeks);
    for (let index = 0; index < bursts; index += 1) {
      await playBurst(soaking, Math.min(burst, orders - soaking.said.length), index);
      week.forward(index % perWeek === perWeek - 1 ? A_WEEK_MIN - perWeek * 40 : 40);
      report?.(`${soaking.said.length} orders, ${week.platform.requests.length} requests, life ${soaking.lives}`);
    }
    week.platform.faults.always(null);
    await settled(soaking);
    const figures = soakFigures(week.db, week.platform, soaking.said, soaking.confirmedBy);
    return { ...figures, met, lives: soaking.lives };
  } finally {
    await week.close();
  }
}

async function playBurst(soaking: Soak, count: number, index: number): Promise<void> {
  const { week, dice, said } = soaking;
  const { platform } = week;
  const burst = Array.from({ length: count }, () => {
    const text = `build ${players[dice(players.length)]} ${clubs[dice(clubs.length)]} like gamer, d${1 + dice(6)}${dice(2) === 0 ? " go" : ""}`;
    const one = platform.says(dice(2) === 0 ? "maren" : "iver", CHANNEL, text);
    if (dice(20) === 0) {
      platform.deliverAgain(one);
    }
    if (dice(40) === 0) {
      platform.gateway.drop(dice(2) === 0 ? "resumable" : "lost");
    }
    return one;
  });
  said.push(...burst);
  if (index % 9 === 4) {
    await anotherLife(soaking, index % 2 === 0);
  }
  await settled(soaking);
  await pressAll(soaking, { label: "Go" });
  if (index % 4 === 1) {
    for (const label of ["Start", "Glue on", "Done"]) {
      await pressAll(soaking, { label, channel: "plover-bench", who: "dessa", most: 1 });
    }
  }
  await pressAll(soaking, { label: "Scratch" });
  await pressAll(soaking, { label: "Drop" });
}

interface Presses {
  readonly label: string;
  readonly channel?: string;
  readonly who?: string;
  /** No more than so many, the newest. */
  readonly most?: number;
}

/** Presses a button on every post of an open order that has it; some twice, some by somebody who may not. */
async function pressAll(soaking: Soak, { label, channel = CHANNEL, who = "maren", most = Number.POSITIVE_INFINITY }: Presses): Promise<void> {
  const { week, dice, confirmedBy } = soaking;
  const { platform, db } = week;
  // A press made while the line is down never reaches a bot: there the platform tells the person so.
  await platform.until(platform.gateway.isConnected, "the line");
  const numbers = new Set(
    db
      .select()
      .from(buildOrder)
      .all()
      .flatMap((order) => (openStates.includes(order.state) ? [`order:${order.id}`] : [])),
  );
  const posts = platform.posts(channel).flatMap((post) => {
    const button = buttonsOf(post).find((one) => one.label === label);
    const subject = button?.custom_id.split("|")[1] ?? "";
    return numbers.has(subject) ? [{ post, subject }] : [];
  });
  const pressed = posts.slice(-most).map(({ post, subject }) => {
    if (dice(25) === 0) {
      platform.presses("akiko", post, label);
    }
    const press = platform.presses(who, post, label);
    if (dice(20) === 0) {
      platform.again(press);
    }
    return { press, subject };
  });
  await settled(soaking);
  for (const { press, subject } of pressed) {
    if (label === "Go" && / confirmed$/.test(readPost(press.shown ?? {}).title)) {
      confirmedBy.add(subject.replace("order:", ""));
    }
  }
}

interface Pressable {
  readonly label?: string;
  readonly custom_id: string;
}
const buttonsOf = ({ components }: Said): readonly Pressable[] =>
  (components as readonly { readonly components: readonly Pressable[] }[]).flatMap((row) => row.components);

/** Stops the bot in good order, or cuts it off before, after or while it sends; then starts it anew. */
async function anotherLife(soaking: Soak, isKilled: boolean): Promise<void> {
  const { week } = soaking;
  await soaking.running.stop();
  week.platform.gateway.drop("lost");
  soaking.lives += 1;
  let left = isKilled ? 3 + soaking.dice(6) : Number.POSITIVE_INFINITY;
  const running = week.start({
    crash: (point) => {
      left -= point.endsWith("commit") ? 0 : 1;
      if (left < 0 && !point.endsWith("commit")) {
        // What is dead tries nothing more: every try counts, and puts the next one off for longer.
        void running.stop();
        throw new Error("cut off");
      }
    },
  });
  await running.entered;
  if (isKilled) {
    await running.stop();
    week.platform.gateway.drop("lost");
    soaking.lives += 1;
    soaking.running = week.start();
    await soaking.running.entered;
  } else {
    soaking.running = running;
  }
}

/** Waits until everything said was read, everything pressed answered and everything planned has left. */
async function settled({ week, said, running }: Soak): Promise<void> {
  const { platform, db } = week;
  const ticking = setInterval(() => void running.tick().catch(() => {}), TICK_MS);
  const looking = setInterval(platform.look, LOOK_MS);
  try {
    await platform.until(() => unsettled(db, platform, said).next().done, "the burst to settle", BURST_PATIENCE_MS);
  } catch (error) {
    throw new Error(`now ${week.now()}\n${[...unsettled(db, platform, said)].join("\n")}`, { cause: error });
  } finally {
    clearInterval(ticking);
    clearInterval(looking);
  }
}
