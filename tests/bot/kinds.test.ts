import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";

interface Shown {
  readonly card?: {
    readonly kind: string;
    readonly title: string;
    readonly tone: string;
    readonly data: Readonly<Record<string, unknown>>;
    readonly files?: readonly { readonly name: string; readonly bytes: number }[];
  };
}

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Every kind of work, as people would type and press it in the rehearsal. */
describe("the script of every kind of work", () => {
  let shown: readonly NonNullable<Shown["card"]>[] = [];
  beforeAll(() => {
    const input = readFileSync(`${root}/fixtures/posts/kinds.txt`);
    const env = { ...process.env, DISCORD_TOKEN: "" };
    const played = spawnSync("npx", ["tsx", "bot/main.ts", "--json"], {
      cwd: root,
      input,
      env,
      encoding: "utf8",
      timeout: 100_000,
      maxBuffer: 2 ** 26,
    });
    expect(played.stderr).toBe("");
    expect(played.status).toBe(0);
    const lines = played.stdout.trim().split("\n");
    shown = lines.flatMap((line) => (JSON.parse(line) as Shown).card ?? []);
  });
  const last = (number: number) =>
    shown.findLast(({ kind, data }) => kind.startsWith("order.") && data.orderNumber === number && data.state !== undefined);

  it("refuses none of it", () => {
    expect(shown.filter(({ tone }) => tone === "refusal")).toEqual([]);
  });

  it.each([
    [6, "turn", "ready"],
    [7, "bend", "ready"],
    [8, "regrip", "ready"],
    [9, "reshaft", "ready"],
    [10, "swap", "outWithPlayer"],
    [11, "grind", "ready"],
    [12, "repair", "ready"],
    [13, "stamp", "ready"],
    [14, "check", "ready"],
    [15, "broke", "ready"],
  ])("brings order %d, a %s, to %s", (number, kind, state) => {
    expect(last(number)?.title).toContain(kind);
    expect(last(number)?.data.state).toBe(state);
  });

  it.each([
    [16, "4i–PW", 7],
    [17, "driver ×2", 2],
    [19, "14 clubs", 14],
  ])("plans order %d, %s, as %d clubs", (number, title, count) => {
    expect(last(number)?.title).toContain(title);
    expect(last(number)?.data.clubs).toHaveLength(count);
  });

  it("prints a sheet", () => {
    const files = shown.flatMap((card) => card.files ?? []);
    expect(files.map(({ name }) => name)).toEqual(["sheet-16.pdf"]);
    expect(files[0]?.bytes).toBeGreaterThan(5000);
  });

  it("answers the questions about stock and backups", () => {
    const kinds = shown.map(({ kind }) => kind);
    for (const kind of ["match", "stock.heads", "stock.replenish"])
      expect(
        kinds.some((one) => one.startsWith(kind)),
        kind,
      ).toBe(true);
  });
});
