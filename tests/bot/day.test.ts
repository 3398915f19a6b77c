import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";

interface Shown {
  readonly id: string;
  readonly channel: string;
  readonly edits: string | null;
  readonly card?: {
    readonly kind: string;
    readonly title: string;
    readonly data: Readonly<Record<string, unknown>>;
    readonly lines: readonly unknown[];
  };
  readonly form?: { readonly title: string };
}

const root = fileURLToPath(new URL("../..", import.meta.url));

function play(...options: readonly string[]) {
  const input = readFileSync(`${root}/fixtures/posts/day.txt`);
  const env = { ...process.env, DISCORD_TOKEN: "" };
  return spawnSync("npx", ["tsx", "bot/main.ts", ...options], { cwd: root, input, env, encoding: "utf8", timeout: 100_000, maxBuffer: 2 ** 26 });
}

describe("the scripted day", () => {
  let shown: readonly Shown[] = [];
  beforeAll(() => {
    const played = play("--json");
    expect(played.stderr).toBe("");
    expect(played.status).toBe(0);
    shown = played.stdout
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as Shown);
  });
  const fresh = (kind: string) => shown.filter((one) => one.card?.kind === kind && one.edits === null);
  const ofOrder = (kind: string, number: number) => fresh(kind).filter((one) => one.card?.data.orderNumber === number);

  it("posts the Monday fill once, with the 26 players of the field", () => {
    const posts = fresh("fill").filter((one) => !one.id.startsWith("answer:"));
    expect(posts.map((one) => one.card?.data.playerCount)).toEqual([26]);
  });

  it("posts the five markings owed once, and takes one press for one of them", () => {
    expect(
      fresh("owed")
        .filter((one) => !one.id.startsWith("answer:"))
        .map((one) => one.card?.data.owedCount),
    ).toEqual([5]);
    expect(fresh("stamped").map((one) => one.card?.title.startsWith("Stamped"))).toEqual([true, false]);
  });

  it("does the week's arithmetic: bounce after a bend, weight for two points, the backup against the gamer", () => {
    expect(fresh("calc.bend")[0]?.card?.data).toMatchObject({ squaredLoftDeg: 54, bounceChangeDeg: -2 });
    expect(fresh("calc.swing")[0]?.card?.data.wishedHeadG).toBeCloseTo(2 * Number(fresh("calc.swing")[0]?.card?.data.headGramsPerPointG), 9);
    expect(fresh("calc.match")[0]?.card?.data.overall).toBe("off");
  });

  it("answers three faults at once, and makes one draft of their correction, delivered twice", () => {
    expect(fresh("order.problems").map((one) => one.card?.data.problemCount)).toEqual([3]);
    expect(ofOrder("order.draft", 6)).toHaveLength(1);
    expect(ofOrder("order.draft", 6)[0]?.card?.data.headSerial).toBe("0417");
  });

  it("refuses the viewer's press", () => {
    expect(fresh("refusal").some((one) => one.card?.title.includes("is for rep"))).toBe(true);
  });

  it("calls the rep once when order 6 is ready, and publishes its spec when it is in the bag", () => {
    expect(ofOrder("call.ready", 6)).toHaveLength(1);
    const versions = fresh("spec")
      .filter((one) => one.card?.title.startsWith("Bram Oxtoby"))
      .map((one) => one.card?.data.versionNumber);
    expect(versions.at(-1)).toBe(Number(versions[0]) + 1);
  });

  it("calls the rep when an order slips", () => {
    expect(fresh("call.late").length).toBeGreaterThan(0);
  });

  it("asks the guided form's three pages", () => {
    expect(shown.flatMap((one) => one.form?.title ?? [])).toHaveLength(3);
  });

  it("shows the same day as text", () => {
    const played = play();
    expect(played.status).toBe(0);
    expect(played.stdout).toContain("OXTOBY RH driver");
  });
});
