import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faceNormal } from "../../../core/head/faceNormal.ts";
import { shaftDirection } from "../../../core/head/shaftDirection.ts";
import type { Hand } from "../../../core/kinds.ts";
import { degrees } from "../../../core/quantity/units.ts";
import hands from "../../../fixtures/published/sleeveHands.json" with { type: "json" };
import { byLibrary, byTable } from "../../support/checkOf.ts";
import { normalInWorld, shaftInWorld } from "./byQuaternions.ts";
import { someHeads, someTilts, tilted } from "./someAngles.ts";
import { spoiled } from "./spoiled.ts";

/** A direction in the world has its y to the player in the right hand, from the player in the left. */
const inHeadFrame = ([x = 0, y = 0, z = 0]: Iterable<number>, hand: Hand) =>
  [x, hand === "right" ? y : -y, z].map((part) => expect.closeTo(part, 12));

describe(byLibrary(faceNormal, "gl-matrix", "the target direction lifted and swung by quaternions"), () => {
  it("agrees in either hand", () => {
    fc.assert(
      fc.property(someHeads, ({ soledLoftDeg, soledFaceDeg, hand }) => {
        expect(faceNormal(soledLoftDeg, soledFaceDeg)).toEqual(inHeadFrame(normalInWorld(soledLoftDeg, soledFaceDeg, hand), hand));
      }),
    );
  });
});

describe(byLibrary(shaftDirection, "gl-matrix", "the hosel's axis turned by quaternions, the clock clockwise from the butt"), () => {
  it("agrees in either hand", () => {
    fc.assert(
      fc.property(someHeads, someTilts, ({ designLieDeg, hand }, tilt) => {
        expect(shaftDirection(designLieDeg, tilt, hand)).toEqual(inHeadFrame(shaftInWorld(designLieDeg, tilt, hand), hand));
      }),
    );
  });
});

describe(byTable(shaftDirection, "sleeveHands", hands), () => {
  it.each(hands.rows)(
    "stands at $seatedLieDeg° with the mark at $clockDeg in the $hand hand",
    ({ hand, clockDeg, tiltDeg, designLieDeg, seatedLieDeg }) => {
      const [toTarget, toPlayer, up] = shaftDirection(degrees(designLieDeg), tilted(tiltDeg, clockDeg), hand as Hand);
      expect((Math.asin(up) * 180) / Math.PI).toBeCloseTo(seatedLieDeg, 9);
      expect(toTarget).toBeCloseTo(0, 12);
      expect(toPlayer).toBeGreaterThan(0);
    },
  );
});

describe("faceNormal", () => {
  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([degrees(9), degrees(1)] as const)) {
      expect(() => faceNormal(...args), where).toThrow("quantity-out-of-range");
    }
  });
});

describe("shaftDirection", () => {
  it("refuses every number of its call when it is none", () => {
    for (const { where, args } of spoiled([degrees(58), tilted(1, 45), "right"] as const)) {
      expect(() => shaftDirection(...args), where).toThrow("quantity-out-of-range");
    }
  });

  it("refuses a hand that is none", () => {
    expect(() => shaftDirection(degrees(58), tilted(1, 45), "" as Hand)).toThrow('"accepted":"left, right"');
  });
});
