import { describe, expect, it } from "vitest";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import { builtClub, type ClubParts } from "../../../core/club/builtClub.ts";
import { clubComponents } from "../../../core/club/clubComponents.ts";
import type { SmallPart, SmallPartName } from "../../../core/club/clubParts.ts";
import { componentsAroundHead } from "../../../core/club/componentsAroundHead.ts";
import { headComponent, headFromCap } from "../../../core/club/headComponent.ts";
import { degrees, grams, kilogramSquareCentimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import heads from "../../../fixtures/published/headCentreUpShaft.json" with { type: "json" };
import set from "../../../fixtures/published/workedSet.json" with { type: "json" };
import { byLaw, byTable } from "../../support/checkOf.ts";
import { refusedOutside } from "./refusals.ts";
import { partsOf, workedClub } from "./someParts.ts";

const mm = millimetres;
const iron = workedClub("7i");
const driver = workedClub("driver");
const small = (name: SmallPartName, massG: number, at: SmallPart["at"]): SmallPart => ({ name, massG: grams(massG), at });

describe(byTable(clubComponents, "workedSet", set), () => {
  it.each(set.rows)("comes to the $club", (row) => {
    const club = assembledClub(clubComponents(partsOf(row)));
    expect(Math.abs(club.totalMassG - row.totalMassG)).toBeLessThan(set.tolerance.massG);
    expect(Math.abs(club.balancePointMm / 25.4 - row.balancePointIn)).toBeLessThan(set.tolerance.balancePointIn);
    expect(Math.abs(club.swingWeightPoints - row.points)).toBeLessThan(set.tolerance.points);
    expect(Math.abs(club.inertiaKgCm2 - row.inertiaKgCm2)).toBeLessThan(set.tolerance.inertiaKgCm2);
  });
});

describe(byTable(headFromCap, "headCentreUpShaft", heads), () => {
  it.each(heads.rows)("takes $upShaftMm mm off the length, told by height or straight", ({ heightMm, fromAxisMm, lieDeg, upShaftMm }) => {
    const byHeight = headFromCap(mm(1000), { heightMm: mm(heightMm), fromAxisMm: mm(fromAxisMm), soledLieDeg: degrees(lieDeg) });
    expect(Math.abs(byHeight - (1000 - upShaftMm))).toBeLessThan(heads.tolerance);
    expect(headFromCap(mm(1000), { upShaftMm: mm(upShaftMm), fromAxisMm: mm(fromAxisMm) })).toBe(1000 - upShaftMm);
  });
});

describe(byLaw(componentsAroundHead, "every part once, at its place and of its mass"), () => {
  const parts: ClubParts = {
    ...iron,
    small: [
      small("sleeve", 6.5, { from: "bore", upShaftMm: mm(25) }),
      small("ferrule", 1, { from: "bore", upShaftMm: mm(40) }),
      small("glue", 1.5, { from: "bore", upShaftMm: mm(20) }),
      small("tip weight", 4, { from: "bore", upShaftMm: mm(10) }),
      small("weight", 8, { from: "head-centre" }),
      small("melt", 2, { from: "head-centre" }),
      small("lead", 1.2, { from: "cap", mm: mm(880) }),
      small("tape", 3, { from: "cap", mm: mm(127) }),
      small("butt weight", 10, { from: "cap", mm: mm(12) }),
    ],
  };
  const club = builtClub(parts);

  it("places them by cap, bore and head (by hand)", () => {
    const bottom = iron.playingLengthMm - iron.boreToGroundMm;
    const centre = iron.playingLengthMm - 3.51;
    const facts = (list: readonly { name: string; stage: string; massG: number; fromCapMm: number; fromAxisMm?: number }[]) =>
      list.map(({ name, stage, massG, fromCapMm, fromAxisMm }) => [name, stage, massG, fromCapMm, fromAxisMm ?? 0]);
    expect(facts(club.headEnd)).toEqual([
      ["sleeve", "ready", 6.5, bottom - 25, 0],
      ["ferrule", "bond", 1, bottom - 40, 0],
      ["glue", "bond", 1.5, bottom - 20, 0],
      ["tip weight", "ready", 4, bottom - 10, 0],
      ["weight", "ready", 8, centre, 36],
      ["melt", "ready", 2, centre, 36],
      ["lead", "ready", 1.2, 880, 0],
    ]);
    expect(facts(club.buttEnd)).toEqual([
      ["tape", "grip", 3, 127, 0],
      ["butt weight", "grip", 10, 12, 0],
    ]);
    expect(facts([club.head, club.grip])).toEqual([
      ["head", "ready", 268, centre, 36],
      ["grip", "grip", 50, 4.25 * 25.4, 0],
    ]);
    expect([club.shaft.name, club.shaft.stage]).toEqual(["shaft", "ready"]);
    expect([club.shaftLengthMm, club.capMm]).toEqual([iron.shaft.lengthMm, 3.175]);
  });

  it("weighs what they weigh together", () => {
    const bareG = iron.head.massG + iron.shaft.massG + iron.grip.massG;
    expect(assembledClub(clubComponents(parts)).totalMassG).toBeCloseTo(bareG + 6.5 + 1 + 1.5 + 4 + 8 + 2 + 1.2 + 3 + 10, 9);
  });

  it("takes a shaft of unknown inertia as a uniform rod, m·L²/12, and a grip at 3 in unless told", () => {
    const rod = { lengthMm: mm(900), massG: grams(100), balanceFromButtMm: mm(440) };
    const around = componentsAroundHead({ ...iron, shaft: rod });
    expect(around.shaft.ownInertiaKgCm2).toBeCloseTo((0.1 * 90 ** 2) / 12, 9);
    expect(around.shaft.fromCapMm).toBeCloseTo(443.175, 9);
    expect(around.grip.ownInertiaKgCm2).toBeCloseTo(0.05 * 7.62 ** 2, 9);
    const told = componentsAroundHead({ ...iron, grip: { ...iron.grip, gyrationMm: mm(50) } });
    expect(told.grip.ownInertiaKgCm2).toBeCloseTo(0.05 * 25, 9);
    expect(componentsAroundHead({ ...iron, shaft: { ...rod, ownInertiaKgCm2: kilogramSquareCentimetres(70) } }).shaft.ownInertiaKgCm2).toBe(70);
  });
});

describe(byLaw(headComponent, "bare head at the end of the length less its centre's height"), () => {
  it("keeps mass, own inertia and distance from the shaft", () => {
    const head = headComponent(driver.head, driver.playingLengthMm, driver.headCentre);
    expect(head).toEqual({ name: "head", stage: "ready", massG: 198, fromCapMm: 45 * 25.4 - 12.7, fromAxisMm: 40, ownInertiaKgCm2: 5 });
  });
});

describe("headComponent", () => {
  it("refuses heads that cannot be", () => {
    const { head, playingLengthMm, headCentre } = iron;
    refusedOutside((massG) => headComponent({ ...head, massG: grams(massG) }, playingLengthMm, headCentre), 0, 2000);
    refusedOutside((own) => headComponent({ ...head, ownInertiaKgCm2: kilogramSquareCentimetres(own) }, playingLengthMm, headCentre), 0, 1000);
    refusedOutside((length) => headComponent(head, mm(length), headCentre), 400, 1500);
    refusedOutside((up) => headComponent(head, playingLengthMm, { upShaftMm: mm(up), fromAxisMm: mm(36) }), -200, 200);
    refusedOutside((off) => headComponent(head, playingLengthMm, { upShaftMm: mm(4), fromAxisMm: mm(off) }), 0, 200);
    const byHeight = { heightMm: mm(20), fromAxisMm: mm(36), soledLieDeg: degrees(62) };
    refusedOutside((z) => headComponent(head, playingLengthMm, { ...byHeight, heightMm: mm(z) }), 0, 150);
    refusedOutside((lie) => headComponent(head, playingLengthMm, { ...byHeight, soledLieDeg: degrees(lie) }), 40, 90);
  });
});

describe("componentsAroundHead", () => {
  it("refuses lengths, masses and places that cannot be", () => {
    const { shaft, grip } = iron;
    const rod = { lengthMm: mm(900), massG: grams(100), balanceFromButtMm: mm(200) };
    const bare = { ...iron, small: [] };
    const fitting = shaft.lengthMm + iron.boreToGroundMm + grip.capMm;
    const around = (lengthMm: number) => ({ ...bare, playingLengthMm: mm(lengthMm), shaft: { ...rod, lengthMm: mm(lengthMm - 30) } });
    refusedOutside((value) => componentsAroundHead(around(value)), 400, 1500);
    refusedOutside((value) => componentsAroundHead({ ...bare, playingLengthMm: mm(value) }), fitting - 60, fitting + 60);
    refusedOutside(
      (value) => componentsAroundHead({ ...bare, boreToGroundMm: mm(value) }),
      0,
      iron.playingLengthMm + 60 - shaft.lengthMm - grip.capMm,
    );
    refusedOutside((value) => componentsAroundHead({ ...bare, shaft: { ...rod, balanceFromButtMm: mm(value) } }), 0, 900);
    refusedOutside((value) => componentsAroundHead({ ...bare, grip: { ...grip, capMm: mm(value) } }), 0, 50);
    refusedOutside((value) => componentsAroundHead({ ...bare, grip: { ...grip, massG: grams(value) } }), 0, 2000);
    refusedOutside((value) => componentsAroundHead({ ...bare, grip: { ...grip, centreFromCapMm: mm(value) } }), 0, iron.playingLengthMm);
    refusedOutside((value) => componentsAroundHead({ ...bare, grip: { ...grip, gyrationMm: mm(value) } }), 0, 300);
    refusedOutside((value) => componentsAroundHead({ ...bare, headCentre: { upShaftMm: mm(value), fromAxisMm: mm(36) } }), -200, 200);
    refusedOutside((value) => componentsAroundHead({ ...bare, headCentre: { upShaftMm: mm(4), fromAxisMm: mm(value) } }), 0, 200);
    refusedOutside((value) => componentsAroundHead({ ...bare, small: [small("lead", value, { from: "cap", mm: mm(880) })] }), 0, 2000);
    refusedOutside((value) => componentsAroundHead({ ...bare, small: [small("lead", 1, { from: "cap", mm: mm(value) })] }), 0, iron.playingLengthMm);
  });

  it("takes a part below the bore as far as the club reaches, and refuses one past it", () => {
    const ferrule = (up: number) => componentsAroundHead({ ...iron, small: [small("ferrule", 1, { from: "bore", upShaftMm: mm(up) })] });
    expect(() => ferrule(-iron.boreToGroundMm)).not.toThrow();
    expect(() => ferrule(-iron.boreToGroundMm - 0.001)).toThrow('"field":"ferrule from bore"');
  });

  it("refuses a shaft the club cannot hold, however it is measured", () => {
    const around = (offMm: number) => () => {
      const fitting = iron.playingLengthMm - iron.boreToGroundMm - iron.grip.capMm;
      componentsAroundHead({ ...iron, shaft: { ...iron.shaft, lengthMm: mm(fitting + offMm) } });
    };
    expect(around(59.999)).not.toThrow();
    expect(around(-59.999)).not.toThrow();
    for (const offMm of [60.001, -60.001]) {
      expect(around(offMm)).toThrow('"field":"shaft, bore and cap past playingLengthMm"');
    }
  });

  it("refuses a small part past the end of the cap, a name or a place it does not know", () => {
    const glue = (up: number) => componentsAroundHead({ ...iron, small: [small("glue", 1, { from: "bore", upShaftMm: mm(up) })] });
    const bottom = mmFromInches(36);
    expect(() => glue(bottom)).not.toThrow();
    expect(() => glue(bottom + 0.1)).toThrow('"field":"glue from bore"');
    expect(() => componentsAroundHead({ ...iron, small: [small("chewing gum" as SmallPartName, 1, { from: "head-centre" })] })).toThrow(
      '"field":"small part"',
    );
    const nowhere = { from: "nowhere" } as unknown as SmallPart["at"];
    expect(() => componentsAroundHead({ ...iron, small: [small("glue", 1, nowhere)] })).toThrow('"field":"glue from"');
  });
});
