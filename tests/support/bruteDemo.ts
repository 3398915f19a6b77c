import { type Cells, models, rowsOf } from "./bruteFiles.ts";
import { type Way, waysOf } from "./bruteWays.ts";
import { type HeadWish, ONE, offBy } from "./bruteWish.ts";

export interface BruteSetting {
  readonly serial: string;
  readonly sleeve: string | null;
  readonly mark: string | null;
  readonly loftBendDeg: number;
  readonly lieBendDeg: number;
  readonly score: number;
  readonly band: number;
  readonly missCount: number;
  readonly rank: readonly (number | string)[];
}

/** The width of a band of scores: the documented default. */
const BAND = 0.25;
const PORTS: Readonly<Record<string, number>> = { driver: 2, fairway: 1, hybrid: 1, putter: 2 };

const TRUCK = "Plover";
const places = new Map(rowsOf("places").map((row) => [`${row.truck} ${row.label}`, row]));
const heads = rowsOf("heads");
/** There are more of each screw than any head has ports. */
const screwsG = rowsOf("weights")
  .filter(({ name }) => rowsOf("stock").some((row) => row.kind === "weight" && row.model === name && row.truck === TRUCK))
  .map((row) => Number(row.mass_g));

/** In this truck, in no other player's bin or drawer, of the right model, hand, grind and stamp, and not spoken for. */
function isCandidate(head: Cells, wish: HeadWish, taken: ReadonlySet<string>): boolean {
  const owner = places.get(`${head.truck} ${head.place}`)?.player ?? "";
  const { stampedLoftDeg = null, grind = null } = wish;
  return (
    head.truck === TRUCK &&
    (owner === "" || owner === wish.player) &&
    !taken.has(head.serial ?? "") &&
    head.model === wish.headModel &&
    head.hand === wish.hand &&
    (grind === null || models.get(head.model ?? "")?.grind === grind) &&
    (stampedLoftDeg === null || Number(head.stamped_loft_deg) === stampedLoftDeg)
  );
}

/** Every sum of screws with how many make it; the fewest of those that are near enough, else of the nearest; none too heavy. */
function massOff(head: Cells, wish: HeadWish): { readonly off: number; readonly count: number } {
  if (wish.mass == null) {
    return { off: 0, count: 0 };
  }
  const { wantedG, toleranceG } = wish.mass;
  const ports = Array.from({ length: PORTS[models.get(head.model ?? "")?.family ?? ""] ?? 0 });
  const ways = ports.reduce<readonly { readonly massG: number; readonly count: number }[]>(
    (before) => [...before, ...before.flatMap(({ massG, count }) => screwsG.map((screwG) => ({ massG: massG + screwG, count: count + 1 })))],
    [{ massG: 0, count: 0 }],
  );
  const offs = ways.map(({ massG, count }) => ({ off: Number(head.mass_g) + massG - wantedG, count }));
  const [best] = offs
    .filter(({ off, count }) => count === 0 || off <= toleranceG + 1e-9)
    .map((way) => ({ ...way, past: Math.round(1e9 * Math.max(0, Math.abs(way.off) - toleranceG)) }))
    .sort((a, b) => a.past - b.past || a.count - b.count || Math.abs(a.off) - Math.abs(b.off));
  const { off, count } = best ?? { off: 0, count: 0 };
  return { off, count: count + (off < -toleranceG - 1e-9 ? 1 : 0) };
}

function scored(head: Cells, way: Way, mass: ReturnType<typeof massOff>, wish: HeadWish): BruteSetting {
  const offs = [
    offBy(way.loftDeg, wish.squaredLoftDeg ?? wish.stampedLoftDeg, ONE.loftDeg),
    offBy(way.faceDeg, wish.soledFaceDeg, ONE.faceDeg),
    offBy(way.lieDeg, wish.seatedLieDeg, ONE.lieDeg),
    offBy(way.bounceDeg, wish.bounceDeg, ONE.bounceDeg),
    mass.off / ONE.massG,
  ];
  const score = offs.reduce((sum, off) => sum + off ** 2, 0);
  const band = Math.floor(score / BAND + 1e-9);
  const missCount = offs.filter((off) => Math.abs(off) > 1 + 1e-7).length;
  const halves = Math.ceil(2 * (Math.abs(way.loftBendDeg) + Math.abs(way.lieBendDeg)) - 1e-6);
  const serial = head.serial ?? "";
  const rank = [band, way.preferred ? 0 : 1, missCount, halves, mass.count, Math.round(score * 1e9), serial, way.sleeve ?? "", way.mark ?? ""];
  const { sleeve, mark, loftBendDeg, lieBendDeg } = way;
  return { serial, sleeve, mark, loftBendDeg, lieBendDeg, score, band, missCount, rank };
}

function compared(one: BruteSetting, other: BruteSetting): number {
  const at = one.rank.findIndex((value, index) => value !== other.rank[index]);
  const [a, b] = [one.rank[at] ?? 0, other.rank[at] ?? 0];
  return at < 0 ? 0 : a < b ? -1 : 1;
}

/**
 * Heads of the demo week chosen the long way: every head of the truck that may be taken, at every mark of every sleeve or
 * bent, each number worked out from the files alone, all of them sorted by the documented rule, the best first. Nothing
 * of core is in it.
 */
export function everySetting(wish: HeadWish, taken: ReadonlySet<string>): readonly BruteSetting[] {
  return heads
    .filter((head) => isCandidate(head, wish, taken))
    .flatMap((head) => {
      const mass = massOff(head, wish);
      return waysOf(head, wish).map((way) => scored(head, way, mass, wish));
    })
    .sort(compared);
}
