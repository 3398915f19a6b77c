import { readFileSync } from "node:fs";
import { PassThrough, Readable } from "node:stream";
import { asc } from "drizzle-orm";
import { describe, expect, it } from "vitest";
import { runRehearsal } from "../../../bot/rehearsal/rehearsal.ts";
import { openScreen } from "../../../bot/rehearsal/screen.ts";
import { rehearsalClock, rehearsalWorld } from "../../../bot/rehearsalBot.ts";
import { buildOrder } from "../../../db/schema/orders.ts";
import { audit } from "../../../db/schema/plumbing.ts";
import type { Db } from "../../../db/write.ts";
import { demoWeek } from "../../support/demoWeek.ts";
import { joinedWeek } from "../../support/platform/joinedWeek.ts";
import { playScript } from "../../support/platform/playScript.ts";

/** What people did, in its order, and how every order stands. */
const recordOf = (db: Db) => ({
  orders: db
    .select()
    .from(buildOrder)
    .orderBy(asc(buildOrder.id))
    .all()
    .map(({ number, kind, clubs, state, heldReason, takenBy, answer, urgent }) => ({
      number,
      kind,
      clubs,
      state,
      heldReason,
      takenBy,
      answer,
      urgent,
    })),
  done: db
    .select()
    .from(audit)
    .orderBy(asc(audit.seq))
    .all()
    .map(({ action, subject }) => `${action} ${subject}`),
});

async function rehearsed(script: string): Promise<ReturnType<typeof recordOf>> {
  const { db, close } = await demoWeek();
  try {
    const clock = rehearsalClock(db);
    const screen = openScreen({ output: new PassThrough().resume(), json: true, zoneOf: () => "UTC", now: clock.now, keepFiles: async () => [] });
    const world = rehearsalWorld(db, screen, (error) => {
      throw error;
    });
    const streams = { input: Readable.from([script]), output: new PassThrough().resume(), errors: new PassThrough().resume() };
    expect(await runRehearsal(world, screen, { ...streams, terminal: false, echo: false, as: "maren", channel: "plover-orders" })).toBe(0);
    return recordOf(db);
  } finally {
    close();
  }
}

describe("the real chat and the rehearsal", () => {
  it.each(["day", "kinds"])("leave the same record of %s.txt, and every press is answered", async (name) => {
    const script = readFileSync(new URL(`../../../fixtures/posts/${name}.txt`, import.meta.url), "utf8");
    const wanted = await rehearsed(script);
    expect(wanted.done.length).toBeGreaterThan(30);
    const { db, close } = await demoWeek();
    const startsAt = rehearsalClock(db).now();
    close();
    const week = await joinedWeek(startsAt);
    try {
      const running = week.start({ seed: 20270503 });
      await running.entered;
      await playScript(week, running, script);
      expect(week.bugs).toEqual([]);
      expect(week.platform.complaints).toEqual([]);
      expect(recordOf(week.db)).toEqual(wanted);
    } finally {
      await week.close();
    }
  });
});
