import { describe, expect, it } from "vitest";
import { partsLeft } from "../../../bot/operations/partsLeft.ts";
import { takePart } from "../../../bot/operations/takePart.ts";
import { defaultAllowances as allowances } from "../../../core/buildSheet/allowances.ts";
import type { PartsInReach } from "../../../core/buildSheet/parts.ts";
import type { ClubPlan } from "../../../core/buildSheet/plan.ts";
import { planClub } from "../../../core/buildSheet/planClub.ts";
import { id } from "../../../core/kinds.ts";
import { defaultSelectionTolerances as tolerances } from "../../../core/selection/selectionTolerances.ts";
import { someGrip, someHead, someParts, someShaft, someSleeve, someTarget, stocked } from "../../core/buildSheet/someParts.ts";
import { somePiece } from "../../core/buildSheet/somePieces.ts";

function planFrom(parts: PartsInReach): ClubPlan | null {
  const target = someTarget({ stampedLoftDeg: 9 });
  const result = planClub({ target, kind: "build", reference: null, parts, allowances, tolerances });
  return result.kind === "planned" ? result.plan : null;
}

const plentiful = someParts({
  heads: [someHead({ serial: "0001" }), someHead({ serial: "0002" })],
  sleeves: [stocked(someSleeve({}), { free: 2 })],
  shafts: [stocked(someShaft({}), { free: 2 })],
  grips: [stocked(someGrip({}), { free: 2 })],
});

const counts = ({ heads, sleeves, shafts, grips }: PartsInReach) => [
  heads.length,
  ...[sleeves, shafts, grips].map((rows) => rows.reduce((sum, { free }) => sum + free, 0)),
];

describe("partsLeft", () => {
  it("leaves for two of a kind what one club took of each, and then nothing", () => {
    const first = planFrom(plentiful);
    const left = first === null ? plentiful : partsLeft(plentiful, first);
    expect(counts(left)).toEqual([1, 1, 1, 1]);
    const second = planFrom(left);
    expect(second?.choice.head.serial).not.toBe(first?.choice.head.serial);
    const none = second === null ? left : partsLeft(left, second);
    expect(counts(none)).toEqual([0, 0, 0, 0]);
    expect(planFrom(none)).toBeNull();
  });

  it("leaves the raw shafts when a prepared one is taken", () => {
    const parts = { ...plentiful, pieces: [somePiece({ tipTrimMm: 0 as never })] };
    const plan = planFrom(parts);
    expect(plan?.piece?.id).toBe(parts.pieces[0]?.id);
    const left = plan === null ? parts : partsLeft(parts, plan);
    expect([left.pieces, counts(left)]).toEqual([[], [1, 1, 2, 1]]);
  });
});

describe("takePart", () => {
  it("gives no head that lies elsewhere", () => {
    const [head] = plentiful.heads;
    const elsewhere = { ...plentiful, heads: plentiful.heads.map((one) => ({ ...one, here: false })) };
    const part = { kind: "head", id: head?.id ?? id<"head">(0), name: "head 0001" } as const;
    expect(takePart(plentiful, part)?.hold).toEqual({ headId: part.id });
    expect(takePart(elsewhere, part)).toBeNull();
  });

  it("takes a counted part from its place alone, and not more than is free there", () => {
    const [row] = plentiful.grips;
    const part = { kind: "counted", modelId: someGrip({}).id, placeId: row?.placeId ?? null, quantity: 2, name: "grip" } as const;
    expect(takePart(plentiful, part)?.left.grips.map(({ free }) => free)).toEqual([0]);
    expect(takePart(plentiful, { ...part, quantity: 3 })).toBeNull();
    expect(takePart(plentiful, { ...part, placeId: id<"place">(99) })).toBeNull();
    expect(takePart(plentiful, { ...part, placeId: null })?.hold).toMatchObject({ placeId: row?.placeId });
  });
});
