import type { MeasuredHead, SleeveModel } from "../../../core/buildSheet/parts.ts";
import type { Target } from "../../../core/buildSheet/plan.ts";
import { defaultSelectionTolerances as tolerances } from "../../../core/selection/selectionTolerances.ts";

/** Ranking heads the long way: every setting of every head, each number worked out from scratch, all sorted. */
export interface Tried {
  readonly serial: string;
  readonly mark: string;
  readonly loftBendDeg: number;
  readonly lieBendDeg: number;
  readonly score: number;
  readonly rank: readonly (number | string)[];
}

interface Wish {
  readonly target: Target;
  readonly heads: readonly MeasuredHead[];
  readonly sleeves: readonly SleeveModel[];
  readonly mass?: { readonly wantedG: number; readonly toleranceG: number; readonly sums: readonly (readonly [massG: number, count: number])[] };
}

interface Read {
  readonly loft: number;
  readonly face: number;
  readonly lie: number;
}

const rad = Math.PI / 180;

/** Squared loft, soled face and seated lie, the shaft leaned by a tilt: two angles between the face and the shaft. */
export function readAt(head: MeasuredHead, tiltDeg: number, clockDeg: number): Read {
  const [l, f, lie, t] = [head.soledLoftDeg * rad, head.soledFaceDeg * rad, head.designLieDeg * rad, tiltDeg * rad];
  const c = (head.hand === "left" ? -clockDeg : clockDeg) * rad;
  const shaft = [
    Math.sin(t) * Math.cos(c),
    Math.cos(t) * Math.cos(lie) - Math.sin(t) * Math.sin(c) * Math.sin(lie),
    Math.cos(t) * Math.sin(lie) + Math.sin(t) * Math.sin(c) * Math.cos(lie),
  ] as const;
  const along = Math.cos(l) * Math.cos(f) * shaft[0] - Math.cos(l) * Math.sin(f) * shaft[1] + Math.sin(l) * shaft[2];
  return { loft: Math.asin(along / shaft[2]) / rad, face: head.soledFaceDeg - Math.atan2(shaft[0], shaft[1]) / rad, lie: Math.asin(shaft[2]) / rad };
}

/** Carbon steel and the like stop at 4°, 17-4 at 2°, a maker's word may be narrower; what was bent before counts. */
function leftOf(head: MeasuredHead, of: "loftChangeDeg" | "lieChangeDeg"): number {
  const past = (head.bends ?? []).reduce((sum, bend) => sum + Math.abs(bend[of]), 0);
  const limit = Math.min(head.model.material === "17-4 stainless" ? 2 : 4, head.model.makerBendLimitDeg ?? 20);
  return head.model.sleeveFamily !== null || head.model.family === "driver" ? 0 : Math.max(0, limit - past);
}

/** The lowest point of a bowl by thirds; a bend within 1/8° is not made. */
function bestBend(leftDeg: number, score: (bendDeg: number) => number): number {
  let [low, high] = [-leftDeg, leftDeg];
  for (let round = 0; round < 120; round += 1) {
    const third = (high - low) / 3;
    [low, high] = score(low + third) < score(high - third) ? [low, high - third] : [low + third, high];
  }
  const found = (low + high) / 2;
  return Math.abs(found) <= 0.125 + 1e-6 ? 0 : found;
}

function massesOf(head: MeasuredHead, mass: NonNullable<Wish["mass"]>): { readonly off: number; readonly count: number } {
  const ways = mass.sums
    .map(([massG, count]) => ({ off: head.massG + massG - mass.wantedG, count }))
    .filter(({ off, count }) => off <= mass.toleranceG + 1e-9 || count === 0);
  const enough = ways
    .filter(({ off }) => Math.abs(off) <= mass.toleranceG + 1e-9)
    .sort((a, b) => a.count - b.count || Math.abs(a.off) - Math.abs(b.off));
  const nearest = ways.toSorted((a, b) => Math.abs(a.off) - Math.abs(b.off) || a.count - b.count);
  const best = enough[0] ?? nearest[0] ?? { off: 0, count: 0 };
  return { off: best.off, count: best.count + (best.off < -mass.toleranceG - 1e-9 ? 1 : 0) };
}

function tried(head: MeasuredHead, sleeve: SleeveModel | null, mark: SleeveModel["marks"][number] | null, wish: Wish): Tried {
  const { target, mass } = wish;
  const read = readAt(head, sleeve?.tiltDeg ?? 0, mark?.clockDeg ?? 0);
  const loftWanted = target.squaredLoftDeg ?? target.stampedLoftDeg;
  const off = (got: number, wanted: number | null, tolerance: number) => (wanted === null ? 0 : (got - wanted) / tolerance);
  const bounceOff = (bend: number) =>
    target.bounceDeg === null ? 0 : head.bounceDeg === null ? 1 : off(head.bounceDeg + bend, target.bounceDeg, tolerances.bounceDeg);
  const loftOff = (bend: number) => off(read.loft + bend, loftWanted, tolerances.squaredLoftDeg);
  const lieOff = (bend: number) => off(read.lie + bend, target.seatedLieDeg, tolerances.seatedLieDeg);
  const loftBendDeg = loftWanted === null ? 0 : bestBend(leftOf(head, "loftChangeDeg"), (bend) => loftOff(bend) ** 2 + bounceOff(bend) ** 2);
  const lieBendDeg = target.seatedLieDeg === null ? 0 : bestBend(leftOf(head, "lieChangeDeg"), (bend) => lieOff(bend) ** 2);
  const reached = mass === undefined ? null : massesOf(head, mass);
  const offs = [
    loftOff(loftBendDeg),
    off(read.face, target.soledFaceDeg, tolerances.soledFaceDeg),
    lieOff(lieBendDeg),
    bounceOff(loftBendDeg),
    reached === null ? 0 : reached.off / tolerances.headMassG,
  ];
  const score = offs.reduce((sum, one) => sum + one ** 2, 0);
  const rank = [
    Math.floor(score / tolerances.scoreBand + 1e-9),
    mark === null || mark.mark === sleeve?.standardMark ? 0 : 1,
    offs.filter((one) => Math.abs(one) > 1 + 1e-7).length,
    Math.ceil(2 * (Math.abs(loftBendDeg) + Math.abs(lieBendDeg)) - 1e-6),
    reached?.count ?? 0,
    Math.round(score * 1e7),
    head.serial,
    sleeve?.name ?? "",
    mark?.mark ?? "",
  ];
  return { serial: head.serial, mark: mark?.mark ?? "", loftBendDeg, lieBendDeg, score, rank };
}

export function before(one: Tried, other: Tried): number {
  const at = one.rank.findIndex((value, index) => value !== other.rank[index]);
  const [a, b] = [one.rank[at] ?? 0, other.rank[at] ?? 0];
  return at < 0 ? 0 : a < b ? -1 : 1;
}

/** Every setting of every head of the hand wished, the best first. */
export function tryEverything(wish: Wish): readonly Tried[] {
  return wish.heads
    .filter(({ hand }) => hand === wish.target.hand)
    .flatMap((head) =>
      head.model.sleeveFamily === null
        ? [tried(head, null, null, wish)]
        : wish.sleeves.flatMap((sleeve) => sleeve.marks.map((mark) => tried(head, sleeve, mark, wish))),
    )
    .sort(before);
}
