import { type Cells, models, numberIn, rowsOf } from "./bruteFiles.ts";
import { bonded, type Reading, sleeved } from "./bruteGauge.ts";
import { type HeadWish, ONE, offBy } from "./bruteWish.ts";

const sleeves = rowsOf("sleeves");
const marks = rowsOf("sleeve-marks");
const bends = rowsOf("head-bends");

/** A head as it would be left. */
export interface Way extends Reading {
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

/** The head as it may be left, in every way. */
export const waysOf = (head: Cells, wish: HeadWish): readonly Way[] =>
  models.get(head.model ?? "")?.sleeve_family ? sleevedWays(head, wish) : bondedWays(head, wish);
