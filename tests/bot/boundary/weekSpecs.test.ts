import { describe, expect, it } from "vitest";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { headComponent, stagedComponents } from "../../../core/buildSheet/stagedComponents.ts";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { bareCutLength } from "../../../core/club/bareCutLength.ts";
import { trimmedShaft } from "../../../core/club/trimmedShaft.ts";
import { id } from "../../../core/kinds.ts";
import { millimetres } from "../../../core/quantity/units.ts";
import { demoWeek } from "./weekCopy.ts";

const week = demoWeek();
const ours = week.specs.flatMap(({ player, bag }) =>
  [...bag.clubs, ...bag.backups].filter(({ outside }) => !outside).map((club) => ({ player, club })),
);

function named<T extends { readonly name: string }>(all: readonly T[], name: string | null) {
  const found = all.find((one) => one.name === name);
  return found === undefined ? null : { ...found, id: id<"partModel">(1) };
}

/** The club's measured parts put together again, or null where the spec does not hold them all. */
function assembled(club: SpecClub) {
  const [headModel, shaft, grip] = [named(week.headModels, club.headModel), named(week.shafts, club.shaftModel), named(week.grips, club.gripModel)];
  if (headModel === null || shaft === null || grip === null || club.lengthMm === null || club.headMassG === null) return null;
  const cut = bareCutLength(millimetres(club.lengthMm), millimetres(headModel.boreToGroundMm), millimetres(grip.capMm));
  const tipTrim = millimetres(club.tipTrimMm ?? 0);
  const around = {
    lengthMm: club.lengthMm,
    headModel,
    sleeve: named(week.sleeves, club.sleeveModel),
    shaft: trimmedShaft(shaft, tipTrim, millimetres(shaft.rawLengthMm - tipTrim - cut)),
    grip,
    wraps: club.wraps ?? 0,
  };
  return assembledClub([...stagedComponents(around, defaultAllowances), headComponent(club.lengthMm, headModel, club.headMassG, defaultAllowances)]);
}

describe("the demo week's specs", () => {
  it("hold every part of every club that is ours", () => {
    expect(ours.length).toBeGreaterThan(400);
    expect(ours.filter(({ club }) => assembled(club) === null)).toEqual([]);
  });

  /** A scale agrees with the sum of the parts to 0.3 points; the record rounds to a quarter and a shelf label to a gram or so. */
  it("weigh and swing as the sum of their parts: within 2 g and 0.75 points", () => {
    const off = ours.filter(({ club }) => {
      const sum = assembled(club);
      const massOff = Math.abs((sum?.totalMassG ?? 0) - (club.totalMassG ?? 0));
      const swingOff = club.swingWeightPoints === null ? 0 : Math.abs((sum?.swingWeightPoints ?? 99) - club.swingWeightPoints);
      return massOff > 2 || swingOff > 0.75;
    });
    expect(off.map(({ player, club }) => `${player} ${club.club}`)).toEqual([]);
  });

  /** Never leave less than 1.5 in of parallel tip section: published guide on stepping iron shafts; taper tips are not trimmed. */
  it("trim no tip further than its parallel section allows, and no taper tip at all", () => {
    for (const { player, club } of ours) {
      const shaft = named(week.shafts, club.shaftModel);
      const allowed = shaft?.tip === "parallel" ? Math.max(0, shaft.parallelTipMm - 38.1) : 0;
      expect(club.tipTrimMm ?? 0, `${player} ${club.club} ${club.shaftModel}`).toBeLessThanOrEqual(allowed + 0.05);
    }
  });

  it("use shafts made for their family of clubs", () => {
    const families = new Map(week.headModels.map(({ name, family }) => [name, family]));
    for (const { player, club } of ours) {
      const family = families.get(club.headModel ?? "");
      expect(named(week.shafts, club.shaftModel)?.forFamilies, `${player} ${club.club}`).toContain(family);
    }
  });

  it("were measured before they went into play", () => {
    const late = week.specs.flatMap(({ player, validFrom, bag }) =>
      [...bag.clubs, ...bag.backups].filter(({ measuredAt }) => measuredAt === null || measuredAt > validFrom).map(({ club }) => `${player} ${club}`),
    );
    expect(late).toEqual([]);
  });
});
