import fc from "fast-check";
import type { MeasuredHead } from "../../../core/buildSheet/parts.ts";
import { degrees } from "../../../core/quantity/units.ts";
import { someHead, someHeadModel, someSleeve } from "../buildSheet/someParts.ts";

/** Readings of a gauge, in tenths, so that heads tie. */
const tenths = (from: number, to: number) => fc.integer({ min: Math.round(from * 10), max: Math.round(to * 10) }).map((value) => value / 10);

const serials = (heads: readonly MeasuredHead[]): readonly MeasuredHead[] =>
  heads.map((head, index) => ({ ...head, id: (1000 + index) as MeasuredHead["id"], serial: String(1000 + ((index * 7) % 100)) }));

/** Driver heads for a loft sleeve, of either hand. */
export const someDrivers = fc
  .array(
    fc.record({
      hand: fc.constantFrom("right" as const, "right" as const, "left" as const),
      soledLoftDeg: tenths(8, 11),
      soledFaceDeg: tenths(-0.5, 1),
      designLieDeg: tenths(57.5, 58.5),
      massG: tenths(194, 203),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((heads) => serials(heads.map(someHead)));

export const twoSleeves = [
  someSleeve({ name: "Loft sleeve 1" }),
  someSleeve({
    name: "Loft sleeve 1.5",
    tiltDeg: 1.5,
    standardMark: "standard",
    marks: Array.from({ length: 8 }, (_, at) => ({ mark: at === 6 ? "standard" : `mark ${at}`, clockDeg: degrees(45 * at) })),
  }),
];

const wedges = (["carbon steel", "17-4 stainless", null] as const).flatMap((material) =>
  [null, 1].map((limit, at) =>
    someHeadModel({
      name: `Tarn ${material ?? "plain"} ${at}`,
      family: "wedge",
      sleeveFamily: null,
      material,
      makerBendLimitDeg: limit === null ? null : degrees(limit),
    }),
  ),
);

const someBend = fc.record({ loftChangeDeg: tenths(-1.5, 1.5).map(degrees), lieChangeDeg: tenths(-1, 1).map(degrees) });

/** Wedge heads of several metals, bent before or not, the bounce measured or not. */
export const someWedges = fc
  .array(
    fc.record({
      model: fc.constantFrom(...wedges),
      soledLoftDeg: tenths(52, 58),
      designLieDeg: tenths(62, 66),
      bounceDeg: fc.option(tenths(7, 13), { freq: 6 }),
      massG: tenths(296, 304),
      bends: fc.array(someBend, { maxLength: 2 }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((heads) => serials(heads.map((head) => ({ ...someHead({ ...head, stampedLoftDeg: 54 }) }))));
