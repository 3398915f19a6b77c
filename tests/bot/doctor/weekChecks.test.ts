import { afterEach, describe, expect, it } from "vitest";
import type { DiscordSettings } from "../../../bot/config/environment.ts";
import { weekChecks } from "../../../bot/doctor/weekChecks.ts";
import { openMemory } from "../../../db/open.ts";
import { setMeta } from "../../../db/repositories/meta.ts";
import { addChannel, addPerson } from "../../../db/repositories/people.ts";
import { write } from "../../../db/write.ts";
import { migrationsFolder } from "../../db/migrationsFolder.ts";
import { GUILD, settings } from "./doctorPlatform.ts";
import { lookAt } from "./lookAt.ts";

const closers: (() => void)[] = [];
afterEach(() => {
  for (const close of closers.splice(0)) {
    close();
  }
});

function week(changed: Partial<DiscordSettings>, guild: string | null = null) {
  const { db, close } = openMemory({ migrationsFolder });
  closers.push(close);
  write(db, (tx) => {
    addChannel(tx, { name: "plover-orders", purpose: "orders" });
    addChannel(tx, { name: "plover-bench", purpose: "bench" });
    addPerson(tx, { name: "Maren", zone: "UTC", lengthUnit: "in" }, { platform: "rehearsal", userId: "maren", roles: [] });
    if (guild !== null) {
      setMeta(tx, "discord.guild", guild);
    }
  });
  return weekChecks(db, { ...settings, ...changed });
}
const ids = (...names: readonly string[]) => new Map(names.map((name, index) => [name, `30000000000000000${index}`]));

describe("weekChecks", () => {
  it.each([
    [null, "ok"],
    [GUILD, "ok"],
    ["200000000000000009", "fault"],
  ])("holds the guild %s of a database against the settings: %s", async (bound, state) => {
    expect((await lookAt(week({}, bound), "guild of the database")).state).toBe(state);
  });

  it.each([
    [["plover-orders", "plover-bench"], "ok", "all 2 have an id"],
    [["plover-orders"], "fault", "no id in DISCORD_CHANNELS for plover-bench: nothing is posted there"],
    [["plover-orders", "plover-bench", "knot"], "fault", "DISCORD_CHANNELS names knot, and the week has no such channel"],
  ])("holds the channels %j against the week's: %s", async (names, state, found) => {
    expect(await lookAt(week({ channels: ids(...names) }), "channels of the week")).toMatchObject({ state, found });
  });

  it.each([
    [["maren"], "ok", "all 1 have an id"],
    [[], "warn", "no id in DISCORD_PEOPLE for maren"],
    [["marren"], "fault", "DISCORD_PEOPLE names marren, and the week has nobody of that handle"],
  ])("holds the people %j against the week's: %s", async (names, state, found) => {
    expect(await lookAt(week({ people: ids(...names) }), "people of the week")).toMatchObject({ state, found });
  });
});
