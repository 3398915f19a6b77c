import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { migrationsFolder } from "./migrationsFolder.ts";

const migrations = readdirSync(migrationsFolder)
  .filter((name) => name.endsWith(".sql"))
  .sort()
  .map((name) => readFileSync(join(migrationsFolder, name), "utf8").replaceAll("--> statement-breakpoint", ""));

describe("a database with holds on it", () => {
  it("keeps every hold, and takes holds of prepared shafts from then on", () => {
    const sqlite = new Database(":memory:");
    sqlite.pragma("foreign_keys = OFF");
    sqlite.exec(migrations[0] ?? "");
    sqlite.exec(`
      INSERT INTO reservation (id, sheet_id, head_id, part_model_id, place_id, quantity, state) VALUES
        (1, 5, 17, NULL, NULL, 1, 'held'),
        (2, 5, NULL, 3, 4, 2, 'consumed');
      INSERT INTO sheet (id, order_id, revision, club, plan) VALUES (5, 1, 1, 'driver', '{}');`);
    for (const migration of migrations.slice(1)) sqlite.exec(migration);
    expect(sqlite.prepare("SELECT * FROM reservation ORDER BY id").all()).toEqual([
      { id: 1, sheet_id: 5, head_id: 17, part_model_id: null, piece_id: null, place_id: null, quantity: 1, state: "held" },
      { id: 2, sheet_id: 5, head_id: null, part_model_id: 3, piece_id: null, place_id: 4, quantity: 2, state: "consumed" },
    ]);
    expect(sqlite.prepare("SELECT copy FROM sheet").pluck().all()).toEqual([1]);
    sqlite.pragma("foreign_keys = OFF");
    const hold = sqlite.prepare("INSERT INTO reservation (sheet_id, head_id, part_model_id, piece_id, state) VALUES (5, ?, ?, ?, 'held')");
    hold.run(null, null, 8);
    expect(() => hold.run(null, null, 8), "a piece is held once").toThrow(/UNIQUE/);
    expect(() => hold.run(17, null, null), "a head is held once").toThrow(/UNIQUE/);
    expect(() => hold.run(18, 3, null), "one thing a hold").toThrow(/reservation_one_thing/);
    expect(() => hold.run(null, null, null), "one thing a hold").toThrow(/reservation_one_thing/);
    sqlite.close();
  });
});
