import { describe, expect, it } from "vitest";
import { readSheetPlan } from "../../../db/repositories/sheetPlan.ts";
import { someHead } from "../../core/buildSheet/someParts.ts";

/** A choice as sheets kept it before heads were bent. */
const choice = (serial: string) => ({
  head: someHead({ serial, bounceDeg: 10 }),
  sleeve: null,
  mark: null,
  attitude: { squaredLoftDeg: 56, soledFaceDeg: 0, seatedLieDeg: 64 },
  score: 1,
  misses: [],
});
const floors = { version: 1, playableAfterBondMin: 0, playableAfterGripMin: 0 };
const old = JSON.stringify({ ...floors, plan: { version: 1, club: "sw", choice: choice("0001"), runnersUp: [choice("0002")] } });

describe("readSheetPlan", () => {
  it("reads a plan of earlier days: no bend, no prepared shaft, bounce as measured", () => {
    const { plan } = readSheetPlan(old, "build");
    expect(plan).toMatchObject({ kind: "build", piece: null, gripMisfit: null, elsewhere: [], remedies: [] });
    expect(plan?.choice).toMatchObject({ bounceDeg: 10, bend: null, bendWarned: false, addedCount: 0, deviations: [] });
    expect(plan?.runnersUp).toMatchObject([{ bounceDeg: 10, bend: null, givesUp: [], head: { serial: "0002" } }]);
  });

  it("knows a swap of earlier days by its order", () => {
    expect(readSheetPlan(old, "swap").plan?.kind).toBe("swap");
  });

  it("leaves a plan of today, and a sheet without one, as they are", () => {
    const bent = { ...choice("0001"), atPreferredMark: false, bounceDeg: 9, bend: { loftChangeDeg: -1, lieChangeDeg: 0 }, bendWarned: true };
    const today = {
      ...floors,
      plan: {
        kind: "reshaft",
        elsewhere: [],
        remedies: [{ code: "sole-work", bounceChangeDeg: 1 }],
        piece: null,
        gripMisfit: null,
        choice: { ...bent, addedCount: 1, deviations: [] },
        runnersUp: [],
      },
    };
    expect(readSheetPlan(JSON.stringify(today), "reshaft")).toEqual(today);
    const none = { ...floors, plan: null, service: null };
    expect(readSheetPlan(JSON.stringify(none), "turn")).toEqual(none);
  });
});
