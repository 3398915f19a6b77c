import { type Degrees, degrees } from "../quantity/units.ts";

export const headMaterials = ["carbon steel", "431 stainless", "304 stainless", "17-4 stainless", "titanium", "other"] as const;
export type HeadMaterial = (typeof headMaterials)[number];

export const headConstructions = ["forged", "cast", "hollow", "multi-material", "bonded fairway"] as const;
export type HeadConstruction = (typeof headConstructions)[number];

/** How far a head may be bent in one plane, all its bends together. */
export interface BendLimit {
  readonly warnAboveDeg: Degrees;
  readonly blockAboveDeg: Degrees;
  /** Not bent at all unless its maker says how far. */
  readonly onlyIfMakerAllows: boolean;
  /** Only by a technician who has the skill for it. */
  readonly needsSkill: boolean;
}

export interface BendLimits {
  readonly byMaterial: Readonly<Record<HeadMaterial, BendLimit>>;
  readonly byConstruction: Readonly<Record<HeadConstruction, BendLimit>>;
}

const limit = (warnAboveDeg: number, blockAboveDeg: number, apart: Partial<BendLimit> = {}): BendLimit => ({
  warnAboveDeg: degrees(warnAboveDeg),
  blockAboveDeg: degrees(blockAboveDeg),
  onlyIfMakerAllows: false,
  needsSkill: false,
  ...apart,
});

/** Warn past 2°, block past 4°: past 2° a wedge's sole is another sole, past 4° most sources stop. */
const general = limit(2, 4);
const makerOnly = limit(2, 4, { onlyIfMakerAllows: true });

/**
 * Shop data: a setting may replace it. The sources disagree (soft carbon 2 to 3°, 431 about 2°, 304 as far as 5 to 7°,
 * some cast heads 4°), so one general rule holds for the softer metals: every source is warned of, none far overstepped.
 * 17-4, the hardest and refused by many makers, is always warned of and stops at 2°. That titanium, hollow and
 * multi-material heads and bonded fairway woods are bent only where their maker allows, and the last by 1° at most, is
 * common practice with no source.
 */
export const defaultBendLimits: BendLimits = {
  byMaterial: {
    "carbon steel": general,
    "431 stainless": general,
    "304 stainless": general,
    "17-4 stainless": limit(0, 2),
    titanium: makerOnly,
    other: general,
  },
  byConstruction: {
    forged: general,
    cast: general,
    hollow: makerOnly,
    "multi-material": makerOnly,
    "bonded fairway": limit(0, 1, { onlyIfMakerAllows: true, needsSkill: true }),
  },
};
