import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultAllowances as allowances } from "../../../core/buildSheet/allowances.ts";
import type { MeasuredHead, PartsInReach } from "../../../core/buildSheet/parts.ts";
import type { Target } from "../../../core/buildSheet/plan.ts";
import { planClub } from "../../../core/buildSheet/planClub.ts";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import type { ClubName } from "../../../core/kinds.ts";
import { defaultSelectionTolerances as tolerances } from "../../../core/selection/selectionTolerances.ts";
import { byLaw } from "../../support/checkOf.ts";
import { tilted } from "../head/someAngles.ts";
import { someClub, someGrip, someHead, someHeadModel, someParts, someShaft, someSleeve, someTarget, someWeight, stocked } from "./someParts.ts";

const IN = 25.4;
const own = someHead({ serial: "0900", soledLoftDeg: 9.5, massG: 190, place: "in the club" });
const played = attitudeOf(own, tilted(1, 225));
const driver = {
  ...played,
  sleeveMark: "strong 1",
  headMassG: 198,
  swingWeightPoints: 3,
};
const shaft = stocked(someShaft({ name: "Sandpiper 60 X" }));

function reshaft(
  target: Partial<Target> = {},
  standing: Parameters<typeof someClub>[0] = driver,
  given: Partial<PartsInReach> & { head?: MeasuredHead | null } = {},
) {
  const { head = own, ...parts } = given;
  const reference = someClub(standing);
  const { squaredLoftDeg, soledFaceDeg, seatedLieDeg, swingWeightPoints } = reference;
  return planClub({
    target: someTarget({
      squaredLoftDeg,
      soledFaceDeg,
      seatedLieDeg,
      swingWeightPoints,
      stampedLoftDeg: 9,
      shaft: "Sandpiper 60 X",
      lengthMm: null,
      grip: null,
      ...target,
    }),
    kind: "reshaft",
    reference,
    ownHead: head,
    parts: someParts({ heads: [someHead({ serial: "0001", soledLoftDeg: 9.2 })], shafts: [shaft], ...parts }),
    allowances,
    tolerances,
  });
}

function planOf(result: ReturnType<typeof planClub>) {
  if (result.kind !== "planned") {
    throw new Error(JSON.stringify(result.faults));
  }
  return result.plan;
}
const faultsOf = (result: ReturnType<typeof planClub>) => (result.kind === "refused" ? result.faults : []);

describe("planClub, a reshaft", () => {
  it("keeps the club's own head at the mark it was played at, and looks for no other", () => {
    const plan = planOf(reshaft());
    expect([plan.kind, plan.choice.head.serial, plan.choice.sleeve?.name, plan.choice.mark, plan.choice.bend]).toEqual([
      "reshaft",
      "0900",
      "Loft sleeve",
      "strong 1",
      null,
    ]);
    expect([plan.runnersUp, plan.elsewhere, plan.remedies, plan.choice.misses.filter(({ quantity }) => quantity !== "swingWeightPoints")]).toEqual([
      [],
      [],
      [],
      [],
    ]);
    expect(plan.choice.atPreferredMark).toBe(true);
  });

  it("keeps length and grip of the record where none is written", () => {
    const plan = planOf(reshaft());
    expect([plan.predicted.lengthMm, plan.grip?.model.name, plan.shaft?.model.name]).toEqual([45.25 * IN, "Gorse Standard Round", "Sandpiper 60 X"]);
    const other = planOf(reshaft({ lengthMm: 45 * IN, grip: "Heather Round" }, driver, { grips: [stocked(someGrip({ name: "Heather Round" }))] }));
    expect([other.predicted.lengthMm, other.grip?.model.name]).toEqual([45 * IN, "Heather Round"]);
  });

  it("needs no sleeve in stock: the one on the head comes along", () => {
    expect(planOf(reshaft({}, driver, { sleeves: [stocked(someSleeve({}), { free: 0 })] })).choice.mark).toBe("strong 1");
    const elsewhere = { sleeves: [stocked(someSleeve({}))], shafts: [], grips: [] };
    expect(planOf(reshaft({}, driver, { sleeves: [], elsewhere })).choice.mark).toBe("strong 1");
    expect(faultsOf(reshaft({}, driver, { sleeves: [] }))).toEqual([
      { code: "short", shortages: [{ part: "sleeve", wanted: "Loft sleeve", nearest: [] }] },
    ]);
  });

  it("takes the sleeve on record, not another of its family", () => {
    const other = someSleeve({ id: 10, name: "Another sleeve" });
    expect(planOf(reshaft({}, driver, { sleeves: [stocked(other), stocked(someSleeve({}))] })).choice.sleeve?.name).toBe("Loft sleeve");
  });

  it("takes the head as it was measured where nobody knows the mark it was played at", () => {
    const { choice } = planOf(reshaft({ squaredLoftDeg: null, soledFaceDeg: null, seatedLieDeg: null }, { ...driver, sleeveMark: null }));
    const standard = attitudeOf(own, tilted(1, 270));
    expect([choice.mark, choice.attitude.squaredLoftDeg]).toEqual(["standard", expect.closeTo(standard.squaredLoftDeg, 9)]);
  });

  it("turns the sleeve only to a mark that is written", () => {
    expect(planOf(reshaft({ sleeveMark: "standard", squaredLoftDeg: null, soledFaceDeg: null, seatedLieDeg: null })).choice.mark).toBe("standard");
  });

  it("counts on the head's mass on record, weights and all, and adds none for the swing weight of the record", () => {
    const weights = [stocked(someWeight(6))];
    const plan = planOf(reshaft({}, driver, { weights }));
    expect([plan.choice.head.massG, plan.weights, plan.leadG, plan.choice.addedCount]).toEqual([198, [], 0, 0]);
    const unknown = planOf(reshaft({}, { ...driver, headMassG: null }, { weights }));
    expect(unknown.choice.head.massG).toBe(190);
  });

  it("adds weights when another swing weight is wished", () => {
    const standing = planOf(reshaft()).predicted.swingWeightPoints ?? 0;
    /** Eight grams at the head of a 45 1/4 in driver, by hand. */
    const wished = standing + (8 * (45.25 - 0.5 - 14)) / 49.6116654;
    const plan = planOf(reshaft({ swingWeightPoints: wished }, driver, { weights: [stocked(someWeight(8))] }));
    expect(plan.weights.map(({ model, count }) => [model.massG, count])).toEqual([[8, 1]]);
    expect(plan.predicted.swingWeightPoints).toBeCloseTo(wished, 6);
  });

  it("says by how much the new shaft misses the swing weight kept", () => {
    const { choice, predicted } = planOf(reshaft({ swingWeightPoints: 12 }, { ...driver, swingWeightPoints: 12 }));
    expect(choice.misses).toEqual([{ quantity: "swingWeightPoints", wanted: 12, got: predicted.swingWeightPoints, tolerance: 0.5 }]);
    expect(choice.deviations).toContainEqual(choice.misses[0]);
  });

  it("bends an iron's head to a lie that is written, from what the record has of it", () => {
    const iron = someHead({
      model: someHeadModel({ name: "Scree", family: "iron", sleeveFamily: null }),
      soledLoftDeg: 34,
      designLieDeg: 62,
      massG: 260,
    });
    const standing = {
      club: "7i" as ClubName,
      sleeveModel: null,
      sleeveMark: null,
      squaredLoftDeg: 34.5,
      soledFaceDeg: 0,
      seatedLieDeg: 62.5,
      stampedLoftDeg: 34,
      headMassG: 262,
      lengthMm: 940,
    };
    const parts = { head: iron, shafts: [stocked(someShaft({ name: "Sandpiper 60 X", forFamilies: ["iron"] }))] };
    const kept = planOf(reshaft({ club: "7i" as ClubName }, standing, parts)).choice;
    expect([kept.bend, kept.mark, kept.attitude.squaredLoftDeg, kept.attitude.seatedLieDeg]).toEqual([
      null,
      null,
      expect.closeTo(34.5, 9),
      expect.closeTo(62.5, 9),
    ]);
    const flat = planOf(reshaft({ club: "7i" as ClubName, seatedLieDeg: 61.5 }, standing, parts)).choice;
    expect([flat.bend, flat.attitude.squaredLoftDeg]).toEqual([{ loftChangeDeg: 0, lieChangeDeg: expect.closeTo(-1, 9) }, expect.closeTo(34.5, 9)]);
  });

  it("names what is missing: the shaft, and a head that nobody knows", () => {
    expect(faultsOf(reshaft({ shaft: null }))).toEqual([{ code: "missing", quantities: ["shaft"] }]);
    expect(faultsOf(reshaft({}, driver, { head: null }))[0]).toEqual({ code: "missing", quantities: ["headModel"] });
    expect(faultsOf(reshaft({ headModel: null, stampedLoftDeg: null, squaredLoftDeg: null }))).toEqual([]);
  });

  it("refuses a kind of work that is none of parts", () => {
    expect(() => planClub({ ...({} as Parameters<typeof planClub>[0]), kind: "bend" as "build", parts: someParts({}) })).toThrow(
      "quantity-unreadable",
    );
  });
});

describe(byLaw(planClub, "a reshaft keeps what the record reads of the head, at any mark and in either hand"), () => {
  it("leaves loft, face and lie as they are on record", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("right" as const, "left" as const),
        fc.constantFrom(...someSleeve({}).marks),
        fc.double({ min: 8, max: 11, noNaN: true }),
        (hand, { mark, clockDeg }, soledLoftDeg) => {
          const reads = attitudeOf(someHead({ hand, soledLoftDeg }), { tiltDeg: someSleeve({}).tiltDeg, clockDeg });
          const { choice } = planOf(reshaft({ hand }, { ...driver, ...reads, sleeveMark: mark }, { head: { ...own, hand } }));
          expect(choice.mark).toBe(mark);
          expect(choice.attitude.squaredLoftDeg).toBeCloseTo(reads.squaredLoftDeg, 9);
          expect(choice.attitude.soledFaceDeg).toBeCloseTo(reads.soledFaceDeg, 9);
          expect(choice.attitude.seatedLieDeg).toBeCloseTo(reads.seatedLieDeg, 9);
        },
      ),
      { numRuns: 50 },
    );
  });
});
