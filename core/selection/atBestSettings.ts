import type { MeasuredHead } from "../buildSheet/parts.ts";
import type { HeadChoice } from "../buildSheet/plan.ts";
import { bentDeg } from "./bentDeg.ts";
import { headDeviations, headScore, isMiss, type Wished, wishedOf } from "./headDeviations.ts";
import { headSettings, type Setting, type SettingQuestion } from "./headSettings.ts";

/** A head at one of its settings, with the numbers that rank it, the first before the second and so on; lower is better. */
interface RankedSetting {
  readonly head: MeasuredHead;
  readonly setting: Setting;
  readonly score: number;
  readonly rank: readonly number[];
}

/** Scores nearer to each other than this are one: what roundings leave decides nothing. */
const SCORE_UNIT = 1e-9;

/** Bends are counted in begun half degrees, so that a little more or less does not decide. */
const bendSteps = (setting: Setting): number => Math.ceil(2 * bentDeg(setting) - 1e-9);

/** A setting ranked; null when its band of scores alone puts it behind the best one so far. */
function rankedSetting(
  head: MeasuredHead,
  setting: Setting,
  wished: readonly Wished[],
  scoreBand: number,
  best: RankedSetting | null,
): RankedSetting | null {
  const { score, missCount } = headScore(wished, setting);
  const band = Math.floor(score / scoreBand + 1e-9);
  if (best !== null && band > (best.rank[0] ?? band)) {
    return null;
  }
  const rank = [band, Number(!setting.atPreferredMark), missCount, bendSteps(setting), setting.mass?.addedCount ?? 0, Math.round(score / SCORE_UNIT)];
  return { head, setting, score, rank };
}

const byText = (one: string, other: string): number => (one < other ? -1 : Number(one > other));

/** Below 0 when one comes before the other. */
function byRank(one: RankedSetting, other: RankedSetting): number {
  for (let at = 0; at < one.rank.length; at += 1) {
    const difference = (one.rank[at] ?? 0) - (other.rank[at] ?? 0);
    if (difference !== 0) {
      return difference;
    }
  }
  return (
    byText(one.head.serial, other.head.serial) ||
    byText(one.setting.sleeve?.name ?? "", other.setting.sleeve?.name ?? "") ||
    byText(one.setting.mark ?? "", other.setting.mark ?? "") ||
    one.head.id - other.head.id
  );
}

function choiceOf({ head, setting, score }: RankedSetting, wished: readonly Wished[]): HeadChoice {
  const { sleeve, mark, atPreferredMark, attitude, bounceDeg, bend, bendWarned, mass } = setting;
  const deviations = headDeviations(wished, setting);
  const misses = deviations.filter(isMiss);
  return { head, sleeve, mark, atPreferredMark, attitude, bounceDeg, bend, bendWarned, addedCount: mass?.addedCount ?? 0, score, deviations, misses };
}

/** Each head once at its best setting, the best first; heads that cannot be set as wished are left out. */
export function atBestSettings(heads: readonly MeasuredHead[], question: SettingQuestion): readonly HeadChoice[] {
  const wished = wishedOf(question.target, question.tolerances);
  const settingsOf = headSettings(question);
  const bestOf = (head: MeasuredHead): RankedSetting | null => {
    let best: RankedSetting | null = null;
    for (const setting of settingsOf(head)) {
      const next = rankedSetting(head, setting, wished, question.tolerances.scoreBand, best);
      best = best === null || (next !== null && byRank(next, best) < 0) ? next : best;
    }
    return best;
  };
  return heads
    .map(bestOf)
    .filter((best) => best !== null)
    .sort(byRank)
    .map((best) => choiceOf(best, wished));
}
