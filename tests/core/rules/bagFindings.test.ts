import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { millimetres } from "../../../core/quantity/units.ts";
import { bagFindings } from "../../../core/rules/bagFindings.ts";
import type { ClubFacts } from "../../../core/rules/clubFacts.ts";
import { clubFindings } from "../../../core/rules/clubFindings.ts";
import published from "../../../fixtures/published/equipmentRules.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";

const irons = (count: number): readonly ClubFacts[] => Array.from({ length: count }, () => ({ family: "iron" as const }));

describe(byTable(bagFindings, "equipmentRules", published.clubsInBag), () => {
  const { limit, rule } = published.clubsInBag;

  it("finds a bag past the number of clubs, and none up to it", () => {
    expect(bagFindings(irons(limit), []).findings).toEqual([]);
    expect(bagFindings(irons(limit + 1), []).findings).toMatchObject([
      {
        code: "clubsInBag",
        rule,
        edition: "Rules of Golf, 2023",
        quantity: "clubs",
        measured: limit + 1,
        limit,
        unit: "",
        tolerance: null,
        withinTestTolerance: false,
        severity: "warning",
        fromMemory: null,
      },
    ]);
  });
});

describe(byLaw(bagFindings, "what is found of a club does not depend on the others in the bag"), () => {
  const club = fc.record({
    family: fc.constantFrom("driver" as const, "putter" as const),
    lengthMm: fc.integer({ min: 400, max: 1400 }).map(millimetres),
  });

  it("finds of each what is found of it alone", () => {
    fc.assert(
      fc.property(fc.array(club, { maxLength: 20 }), (clubs) => {
        expect(bagFindings(clubs, ["G-10"]).clubs).toEqual(clubs.map((one) => clubFindings(one, ["G-10"])));
      }),
    );
  });
});

describe("bagFindings", () => {
  it("says that only the governing bodies rule, of an empty bag too", () => {
    expect(bagFindings([], [])).toEqual({ findings: [], clubs: [], ruledBy: "governingBodiesOnly" });
  });

  it("takes 50 clubs and refuses 51", () => {
    expect(bagFindings(irons(50), []).clubs).toHaveLength(50);
    expect(() => bagFindings(irons(51), [])).toThrow('list-of-wrong-size {"field":"clubs"');
  });
});
