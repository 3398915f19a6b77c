import { afterEach, describe, expect, it } from "vitest";
import { timeChecks } from "../../../bot/doctor/timeChecks.ts";
import { instant } from "../../../core/kinds.ts";
import { openMemory } from "../../../db/open.ts";
import { appendAudit } from "../../../db/repositories/audit.ts";
import { addEvent } from "../../../db/repositories/people.ts";
import { write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../../db/migrationsFolder.ts";
import { lookAt } from "./lookAt.ts";

const closers: (() => void)[] = [];
afterEach(() => {
  for (const close of closers.splice(0)) {
    close();
  }
});

function database(zone: string) {
  const { db, close } = openMemory({ migrationsFolder });
  closers.push(close);
  write(db, (tx) => {
    const days = { monday: "2027-05-03", firstPracticeRound: "2027-05-04", walkMin: 5, keepsListForPlay: false };
    addEvent(tx, { name: "Cup", course: "Links", zone, ...days });
    appendAudit(tx, { at: MONDAY, personId: null, action: "loaded", subject: "week", body: null });
  });
  return db;
}

describe("timeChecks", () => {
  it.each([
    ["1970-01-01T00:03:00Z", "fault"],
    ["2025-12-31T23:59:59Z", "fault"],
    ["2026-11-26T02:00:00Z", "ok"],
    ["2100-01-01T00:00:00Z", "fault"],
  ])("holds a clock at %s without a database: %s", async (at, state) => {
    expect(
      (
        await lookAt(
          timeChecks(null, () => Date.parse(at)),
          "clock",
        )
      ).state,
    ).toBe(state);
  });

  it("warns of a clock before the newest entry of the record", async () => {
    const db = database("Europe/Lisbon");
    expect(
      (
        await lookAt(
          timeChecks(db, () => instant(MONDAY - 1)),
          "clock",
        )
      ).state,
    ).toBe("warn");
    expect(
      (
        await lookAt(
          timeChecks(db, () => MONDAY),
          "clock",
        )
      ).state,
    ).toBe("ok");
  });

  it.each([
    ["Europe/Lisbon", "ok"],
    ["America/St_Johns", "ok"],
    ["Europe/Nowhere", "fault"],
  ])("knows the zone %s of an event: %s", async (zone, state) => {
    expect(
      await lookAt(
        timeChecks(database(zone), () => MONDAY),
        "zones",
      ),
    ).toMatchObject({ state, found: expect.stringContaining(zone) });
  });

  it("finds zone data without daylight saving at fault", async () => {
    expect(
      (
        await lookAt(
          timeChecks(
            null,
            () => MONDAY,
            () => 0,
          ),
          "zones",
        )
      ).state,
    ).toBe("fault");
  });
});
