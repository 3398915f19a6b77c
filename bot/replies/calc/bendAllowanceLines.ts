import type { BendAllowance, BendReason } from "../../../core/head/bendAllowed.ts";
import { cautionsFor } from "../../../core/rules/cautionsFor.ts";
import type { Line } from "../../chat/types.ts";
import { line } from "../card.ts";
import { cautionWords } from "../cautionWords.ts";
import { shown } from "../shown.ts";
import type { BendFacts } from "./bendFacts.ts";

type OverLimit = Extract<BendReason, { plane: unknown }>;

const total = ({ plane, totalDeg }: OverLimit): string => `${shown.stamp(totalDeg)}° of ${plane} in all its bends`;

const overLimit: Readonly<Record<OverLimit["code"], (of: OverLimit) => string>> = {
  "past-warning": (of) => (of.limitDeg === 0 ? "every bend of such a head wants care" : `${total(of)}, past ${shown.stamp(of.limitDeg)}°`),
  "past-limit": (of) => `${total(of)}, past the ${shown.stamp(of.limitDeg)}° it bears`,
};
const notAtAll: Readonly<Record<Exclude<BendReason, OverLimit>["code"], string>> = {
  "maker-does-not-allow": "its maker has not said how far (if told: maker 2)",
  "needs-skill": "it takes a technician skilled in bonded heads (if so: skilled)",
};

const say = (reason: BendReason): string => ("plane" in reason ? overLimit[reason.code](reason) : notAtAll[reason.code]);

const verdicts: Readonly<Record<BendAllowance["kind"], string>> = { allowed: "Allowed", warned: "With care", blocked: "Do not bend" };

/** A bond may be green, and what is at hand besides does not matter to a bend. */
const caution = cautionsFor("bend", ["epoxy"])
  .map(({ code }) => cautionWords[code])
  .join("; ");

export const limitWords = ({ warnAboveDeg, blockAboveDeg, onlyIfMakerAllows }: BendAllowance["limits"]): string =>
  `care past ${shown.stamp(warnAboveDeg)}°, stop past ${shown.stamp(blockAboveDeg)}°, all bends of a plane added up${onlyIfMakerAllows ? "; only where its maker allows" : ""}`;

/** Where the default limits come from. */
export const limitsSource =
  "a rule of the shop between sources 2 to 3° apart: soft carbon 2 to 3°, 431 about 2°, 304 as far as 5 to 7°, some cast heads 4°, 17-4 refused by many makers. Titanium, hollow, multi-material and bonded heads: common practice, no source.";

/** Whether the head bears the bend, why not, and the caution of the step. */
export function bendAllowanceLines({ allowance, answer, onSleeve }: Pick<BendFacts, "allowance" | "answer" | "onSleeve">): readonly Line[] {
  const { bend } = answer.kind === "bend" ? answer : answer.nearest;
  if (bend.loftChangeDeg === 0 && bend.lieChangeDeg === 0) return [];
  const { limits } = allowance;
  const [first = null, ...others] = allowance.reasons.map(say);
  const within = `care past ${shown.stamp(limits.warnAboveDeg)}°, stop past ${shown.stamp(limits.blockAboveDeg)}°`;
  return [
    line({ strong: `${verdicts[allowance.kind]}: ` }, first ?? within),
    ...others.map((why) => line(`And ${why}`)),
    ...(onSleeve ? [line("It sits on a sleeve: turn that instead, see /calc sleeve")] : []),
    ...(allowance.kind === "blocked"
      ? []
      : [
          line(
            `Caution: cold, the head clamped, face and finish covered; ${caution}. Follow the maker's data sheet and local rules; if unsure ask a qualified person.`,
          ),
        ]),
  ];
}
