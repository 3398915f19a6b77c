import { expect, it } from "vitest";
import { findReply } from "../../../db/repositories/inbound.ts";
import { diceOf, someFault } from "../../drill/soakFaults.ts";
import { joinedWeek } from "../../support/platform/joinedWeek.ts";

const ROUNDS = 30;
const ROUNDS_A_LIFE = 6;
const QUESTIONS = 6;
const TICK_MS = 500;
const LOOK_MS = 50;

it("reads every message, whatever line is cut and whichever life it is said in", async () => {
  const week = await joinedWeek();
  const { platform, db } = week;
  const dice = diceOf(2);
  let running = week.start();
  await running.entered;
  platform.faults.always(someFault(dice, new Map()));
  const ticking = setInterval(() => void running.tick().catch(() => {}), TICK_MS);
  const looking = setInterval(platform.look, LOOK_MS);
  try {
    for (let round = 0; round < ROUNDS; round += 1) {
      const said = Array.from({ length: QUESTIONS }, () => {
        const one = platform.says("maren", "plover-orders", `where ${1 + dice(5)}`);
        if (dice(4) === 0) {
          platform.deliverAgain(one);
        }
        if (dice(8) === 0) {
          platform.gateway.drop(dice(2) === 0 ? "resumable" : "lost");
        }
        return one;
      });
      if (round % ROUNDS_A_LIFE === ROUNDS_A_LIFE - 1) {
        await running.stop();
        platform.gateway.drop("lost");
        running = week.start();
        await running.entered;
      }
      const isRead = (id: string): boolean => findReply(db, `message:${id}:0`) !== null;
      await platform.until(() => said.every(({ id }) => isRead(id)), `the reading in round ${round}`);
    }
    platform.faults.always(null);
    expect(platform.complaints).toEqual([]);
  } finally {
    clearInterval(ticking);
    clearInterval(looking);
    await week.close();
  }
});
