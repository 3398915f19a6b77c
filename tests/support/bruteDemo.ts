import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { bonded, type Reading, sleeved } from "./bruteGauge.ts";

/**
 * Heads of the demo week chosen the long way: every head of the truck at every mark of every sleeve or bent, each number
 * worked out from the files alone, all of them sorted by the documented rule. Nothing of core is in it.
 */

export type Cells = Readonly<Record<string, string>>;

export const rowsOf = (file: string): readonly Cells[] =>
  parse(readFileSync(new URL(`../../fixtures/scenario/${file}.csv`, import.meta.url)), { columns: true, skip_empty_lines: true });

export const numberIn = (cells: Cells | undefined, column: string): number | null => {
  const cell = cells?.[column] ?? "";
  return cell === "" ? null : Number(cell);
};

/** What an order wishes of a head; what it does not name is left out. */
export interface HeadWish {
  readonly player: string;
  readonly hand: string;
  readonly headModel: string;
  readonly grind?: string | null;
  readonly stampedLoftDeg?: number | null;
  readonly squaredLoftDeg?: number | null;
  readonly soledFaceDeg?: number | null;
  readonly seatedLieDeg?: number | null;
  readonly bounceDeg?: number | null;
  readonly sleeveMark?: string | null;
  /** The mark that wins among equals, where it is not the sleeve's standard. */
  readonly preferredMark?: string | null;
  readonly mass?: { readonly wantedG: number; readonly toleranceG: number } | null;
}

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

/** How far off counts as one, and the width of a band of scores: the documented defaults. */
const ONE = { loftDeg: 0.25, faceDeg: 0.5, lieDeg: 0.5, bounceDeg: 1, massG: 2 };
const BAND = 0.25;
const PORTS: Readonly<Record<string, number>> = { driver: 2, fairway: 1, hybrid: 1, putter: 2 };

const TRUCK = "Plover";
const models = new Map(rowsOf("head-models").map((row) => [row.name ?? "", row]));
const places = new Map(rowsOf("places").map((row) => [`${row.truck} ${row.label}`, row]));
const heads = rowsOf("heads");
const sleeves = rowsOf("sleeves");
const marks = rowsOf("sleeve-marks");
const bends = rowsOf("head-bends");
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

interface Way extends Reading {
  readonly sleeve: string | null;
  readonly mark: string | null;
  readonly preferred: boolean;
  readonly loftBendDeg: number;
  readonly lieBendDeg: number;
}

/** The head in every sleeve of its family at every mark that may be tried. */
function sleevedWays(head: Cells, wish: HeadWish): readonly Way[] {
  const { squaredLoftDeg, soledFaceDeg, seatedLieDeg, sleeveMark } = wish;
  const turns = [squaredLoftDeg, soledFaceDeg, seatedLieDeg, sleeveMark].some((one) => one != null);
  const family = models.get(head.model ?? "")?.sleeve_family;
  return sleeves
    .filter((sleeve) => sleeve.family === family)
    .flatMap((sleeve) => {
      const printed = marks.filter((row) => row.sleeve === sleeve.name);
      const standard = printed.find((row) => row.standard === "yes");
      const preferredMark = wish.preferredMark ?? standard?.mark;
      const at = (row: Cells | undefined) => sleeved(head, Number(sleeve.tilt_deg), Number(row?.clock_deg));
      const only = turns ? sleeveMark : preferredMark;
      return printed
        .filter((row) => only == null || row.mark === only)
        .map((row) => ({
          ...at(row),
          ...(sleeveMark != null && squaredLoftDeg == null ? { loftDeg: at(standard).loftDeg } : {}),
          sleeve: sleeve.name ?? "",
          mark: row.mark ?? "",
          preferred: row.mark === preferredMark,
          loftBendDeg: 0,
          lieBendDeg: 0,
        }));
    });
}

/** How far a head may still be bent in a plane: 4°, 17-4 2°, hollow and titanium only as the maker says; past bends count. */
function bendLeftDeg(head: Cells, column: string): number {
  const model = models.get(head.model ?? "");
  const makerDeg = numberIn(model, "maker_bend_limit_deg");
  const askTheMaker = model?.material === "titanium" || model?.construction === "hollow" || model?.construction === "multi-material";
  const mostDeg = askTheMaker && makerDeg === null ? 0 : Math.min(model?.material === "17-4 stainless" ? 2 : 4, makerDeg ?? 4);
  const past = bends.filter(({ serial }) => serial === head.serial).reduce((sum, bend) => sum + Math.abs(Number(bend[column])), 0);
  return model?.family === "driver" ? 0 : Math.max(0, mostDeg - past);
}

/** The lowest point of a bowl, by thirds; what no gauge tells, 1/8°, is not bent. */
function lowest(mostDeg: number, score: (bendDeg: number) => number): number {
  let [low, high] = [-mostDeg, mostDeg];
  for (let round = 0; round < 100; round += 1) {
    const third = (high - low) / 3;
    [low, high] = score(low + third) < score(high - third) ? [low, high - third] : [low + third, high];
  }
  const found = (low + high) / 2;
  return Math.abs(found) <= 0.125 + 1e-6 ? 0 : found;
}

const offBy = (got: number | null, wanted: number | null | undefined, one: number): number =>
  wanted == null ? 0 : got === null ? 1 : (got - wanted) / one;

/** The head bonded, bent as near to the wish as it may go; a mark that is written is for a sleeve. */
function bondedWays(head: Cells, wish: HeadWish): readonly Way[] {
  const bare = bonded(head);
  const loft = wish.squaredLoftDeg ?? wish.stampedLoftDeg;
  const loftScore = (bendDeg: number) =>
    offBy(bare.loftDeg + bendDeg, loft, ONE.loftDeg) ** 2 +
    offBy(bare.bounceDeg === null ? null : bare.bounceDeg + bendDeg, wish.bounceDeg, ONE.bounceDeg) ** 2;
  const lieScore = (bendDeg: number) => offBy(bare.lieDeg + bendDeg, wish.seatedLieDeg, ONE.lieDeg) ** 2;
  const loftBendDeg = loft == null ? 0 : lowest(bendLeftDeg(head, "loft_change_deg"), loftScore);
  const lieBendDeg = wish.seatedLieDeg == null ? 0 : lowest(bendLeftDeg(head, "lie_change_deg"), lieScore);
  const left = {
    loftDeg: bare.loftDeg + loftBendDeg,
    faceDeg: bare.faceDeg,
    lieDeg: bare.lieDeg + lieBendDeg,
    bounceDeg: bare.bounceDeg === null ? null : bare.bounceDeg + loftBendDeg,
  };
  return wish.sleeveMark == null ? [{ ...left, sleeve: null, mark: null, preferred: true, loftBendDeg, lieBendDeg }] : [];
}

function scored(head: Cells, way: Way, wish: HeadWish): BruteSetting {
  const mass = massOff(head, wish);
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

/** Every setting of every head of this truck that may be taken, the best first. */
export function everySetting(wish: HeadWish, taken: ReadonlySet<string>): readonly BruteSetting[] {
  return heads
    .filter((head) => isCandidate(head, wish, taken))
    .flatMap((head) =>
      (models.get(head.model ?? "")?.sleeve_family ? sleevedWays(head, wish) : bondedWays(head, wish)).map((way) => scored(head, way, wish)),
    )
    .sort(compared);
}
