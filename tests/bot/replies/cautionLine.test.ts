import { describe, expect, it } from "vitest";
import type { ClubFacts, OrderFacts } from "../../../bot/operations/orderFacts.ts";
import { cautionLine } from "../../../bot/replies/cautionLine.ts";
import { cautionWords } from "../../../bot/replies/cautionWords.ts";
import type { StepKind } from "../../../core/bench/benchTypes.ts";
import { inchesAsFraction } from "../../../core/quantity/inchesAsFraction.ts";
import published from "../../../fixtures/published/cautions.json" with { type: "json" };
import { lineText } from "../../support/readCard.ts";

interface Work {
  readonly kind?: OrderFacts["kind"];
  readonly state?: OrderFacts["state"];
  readonly club?: string;
  readonly shaft?: "graphite" | "steel" | null;
  readonly mark?: string | null;
  readonly leadG?: number;
}

/** An order of one club whose next steps are these. */
function sheetOf(
  steps: readonly StepKind[],
  { kind = "build", state = "building", club = "driver", shaft = "graphite", mark = null, leadG = 0 }: Work,
) {
  const plan = { shaft: shaft === null ? null : { model: { material: shaft } }, choice: { mark }, leadG };
  const facts = { club, plan, steps: steps.map((step) => ({ route: { kind: step }, state: "todo" })) } as unknown as ClubFacts;
  return { kind, state, clubs: [facts] } as unknown as OrderFacts;
}
const said = (steps: readonly StepKind[], work: Work = {}): string => cautionLine(sheetOf(steps, work)).map(lineText).join("\n");

describe("cautionLine", () => {
  it("says the cautions of the next step that has any in one line, and whose word goes first", () => {
    expect(said(["pullParts", "tipPrepare", "bond"])).toBe(
      "Caution: Graphite dust: extraction and a mask; keep it off electronics; eye protection. " +
        "Follow the product's data sheet and local rules; if unsure ask a qualified person.",
    );
  });

  it("speaks of graphite only with a graphite shaft, or one nobody knows", () => {
    expect(said(["tipPrepare"], { shaft: "steel" })).not.toContain("raphite");
    expect(said(["cut"], { shaft: "steel" })).toContain("sparks");
    expect(said(["tipPrepare"], { shaft: null })).toContain("Graphite dust");
  });

  it.each([
    ["bond", "Epoxy sensitises skin: gloves on"],
    ["grip", "Solvent vapour: air the truck, no sparks"],
    ["bend", "Never on green glue; watch the hosel for cracks"],
  ] as const)("has the caution of %s", (step, words) => {
    expect(said([step, "bond"])).toContain(`Caution: ${words}`);
  });

  it("speaks of glue at the saw only when the club is glued", () => {
    expect(said(["cut"], { shaft: "graphite" })).not.toContain("green glue");
    expect(said(["cut", "bond"], { shaft: "graphite" })).toContain("green glue");
  });

  it.each([
    ["reshaft", null, true],
    ["repair", "standard", true],
    ["swap", null, true],
    ["swap", "standard", false],
    ["regrip", null, false],
  ] as const)("calls the hosel of a %s with sleeve %s hot: %s", (kind, mark, isHot) => {
    expect(said(["removeOld"], { kind, mark }).includes("Hot hosel")).toBe(isHot);
  });

  it("lets only a qualified grinder grind, and takes a wood's head for titanium", () => {
    expect(said(["soleWork"], { club: "sw" })).toMatch(/steel throws sparks.*only a qualified grinder/i);
    expect(said(["soleWork"], { club: "sw" })).not.toContain("itanium");
    expect(said(["soleWork"], { club: "driver" })).toContain("itanium dust burns");
  });

  it("speaks of lead when there is lead on the sheet", () => {
    expect(said(["dryWeigh"], { leadG: 2 })).toContain("Wash hands after lead");
    expect(said(["dryWeigh"], { leadG: 0 })).toBe("");
  });

  it("says nothing once the club is ready, or of steps without a caution", () => {
    expect(said(["bond"], { state: "ready" })).toBe("");
    expect(said(["walk", "sign"])).toBe("");
  });
});

describe(`cautionWords: ${published.source}`, () => {
  it.each([
    ["workRest", "workRestGap"],
    ["tongueGuard", "tongueGuardGap"],
  ] as const)("says the gap of the %s as its source has it", (code, quantity) => {
    const row = published.rows.find((one) => one.code === code && one.quantity === quantity);
    expect(row?.unit).toBe("mm");
    expect(cautionWords[code]).toContain(`${inchesAsFraction(Number(row?.value))} in`);
  });

  it("says at what heat a graphite shaft softens", () => {
    const row = published.rows.find(({ quantity }) => quantity === "shaftResinSoftens");
    expect(cautionWords.shaftResinSoftens).toContain(`${Math.round(Number(row?.value))} ${row?.unit}`);
  });
});
