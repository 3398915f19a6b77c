import type { BendAllowance } from "../../../core/head/bendAllowed.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Card, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { bendAllowanceLines, limitsSource, limitWords } from "./bendAllowanceLines.ts";
import { bendData } from "./bendData.ts";
import { type BendFacts, type NoBend, partsOf } from "./bendFacts.ts";
import { calcCard } from "./calcCard.ts";
import { directedInputs, sides } from "./directedInputs.ts";

const size = (deg: number): string => shown.stamp(Math.abs(deg));
const fromTo = (fromDeg: number, changeDeg: number): string => `${shown.stamp(fromDeg)} to ${shown.stamp(fromDeg + changeDeg)}`;

/** What was written, its signs in words and `56 to 54` as it was said. */
export const bendInputs = (inputs: readonly Understood[]): readonly Understood[] =>
  directedInputs(inputs, { "squared loft": sides.loft, lie: sides.lie, bounce: ["more", "less"] }).map((input) => {
    const [from, to, ...others] = input.values;
    const isPair = ["squared loft", "lie", "bounce"].includes(input.name) && from !== undefined && to?.unit === "°" && others.length === 0;
    return isPair ? { ...input, values: [{ written: `${from.written} to ${to.written}`, unit: "°" }] } : input;
  });

/** A reading from and to, or only by how much when nobody told what it is. */
function changeLine(name: string, fromDeg: number | null, changeDeg: number, [more, less]: readonly [string, string]): Line {
  const word = `${size(changeDeg)}° ${changeDeg > 0 ? more : less}`;
  return line(fromDeg === null ? `${name}: ${word}` : `${name} ${fromTo(fromDeg, changeDeg)}: ${word}`);
}

function bounceLine(facts: BendFacts): readonly Line[] {
  const { answer, bounceDeg, allowance } = facts;
  const { loftChangeDeg } = partsOf({ answer }).bend;
  if (answer.kind === "refused") return noBendLines(answer, facts);
  if (loftChangeDeg === 0) return [];
  if (bounceDeg !== null) return [changeLine("Bounce", bounceDeg, loftChangeDeg, ["more", "less"])];
  return [
    line({ strong: `Bounce ${size(loftChangeDeg)}° ${loftChangeDeg > 0 ? "more" : "less"} than it has` }, ": it goes with the loft"),
    ...(allowance.kind === "blocked" ? [] : [line("What bounce has it? Then: bounce 10")]),
  ];
}

/** A bounce that bending cannot give; when nobody told the bounce it has, only by how much. */
function noBendLines({ wantedBounceDeg, bounceMissDeg, loftAtWantedBounceDeg, nearest }: NoBend, { bounceDeg, loftDeg }: BendFacts): readonly Line[] {
  const less = bounceMissDeg < 0;
  const atLoft = loftAtWantedBounceDeg - nearest.after.squaredLoftDeg;
  return [
    line({ strong: `${wantedBounce(wantedBounceDeg, bounceDeg, bounceMissDeg)} cannot come from this bend` }, ": bounce goes with the loft"),
    line(
      `It takes ${less ? "another grind, or sole work by a qualified grinder" : "another grind or head"}: ${size(bounceMissDeg)}° to ${less ? "take off" : "gain"}`,
    ),
    line(
      `Bending alone does it ${changeWords(atLoft, sides.loft)}${bounceDeg === null || loftDeg === null ? "" : `, at loft ${shown.stamp(loftAtWantedBounceDeg)}`}`,
    ),
  ];
}

const wantedBounce = (wantedDeg: number, bounceDeg: number | null, missDeg: number): string =>
  bounceDeg === null ? `${changeWords(missDeg, ["more", "less"])} bounce` : `Bounce ${shown.stamp(wantedDeg)}`;

function offsetLine(facts: BendFacts): readonly Line[] {
  const { bend, after } = partsOf(facts);
  if (bend.loftChangeDeg === 0 || after.offsetChangeMm === null) return [];
  const change = `${Math.abs(after.offsetChangeMm).toFixed(1)} mm ${after.offsetChangeMm > 0 ? "more" : "less"}`;
  return [line(after.offsetMm === null ? `Offset ${change}` : `Offset ${after.offsetMm.toFixed(1)} mm, ${change}`)];
}

function resultLines(facts: BendFacts): readonly Line[] {
  const { bend, after } = partsOf(facts);
  return [
    ...(bend.loftChangeDeg === 0 ? [] : [changeLine("Squared loft", facts.loftDeg, bend.loftChangeDeg, sides.loft)]),
    ...bounceLine(facts),
    ...offsetLine(facts),
    ...(bend.lieChangeDeg === 0
      ? []
      : [
          changeLine("Lie", facts.lieDeg, bend.lieChangeDeg, sides.lie),
          line(`${Math.abs(after.toeLiftMm).toFixed(1)} mm over 50 mm of sole, the toe ${after.toeLiftMm > 0 ? "up" : "down"}`),
        ]),
  ];
}

function titleOf(facts: BendFacts): string {
  const { bend } = partsOf(facts);
  const { loftDeg, lieDeg, bounceDeg, answer } = facts;
  const name = facts.named === null ? "" : `${facts.named}: `;
  if (answer.kind === "refused") return `${name}${wantedBounce(answer.wantedBounceDeg, bounceDeg, answer.bounceMissDeg)} is no bend`;
  const moved = [
    ...(bend.loftChangeDeg === 0 ? [] : [loftDeg === null ? changeWords(bend.loftChangeDeg, sides.loft) : fromTo(loftDeg, bend.loftChangeDeg)]),
    ...(bend.loftChangeDeg === 0
      ? []
      : [bounceDeg === null ? `bounce ${changeWords(bend.loftChangeDeg, ["more", "less"])}` : `bounce ${fromTo(bounceDeg, bend.loftChangeDeg)}`]),
    ...(bend.lieChangeDeg === 0 ? [] : [lieDeg === null ? changeWords(bend.lieChangeDeg, sides.lie) : `lie ${fromTo(lieDeg, bend.lieChangeDeg)}`]),
  ];
  return `${name}${moved.length === 0 ? "nothing to bend" : moved.join(", ")}`;
}

const changeWords = (deg: number, [more, less]: readonly [string, string]): string => `${size(deg)}° ${deg > 0 ? more : less}`;

const tones: Readonly<Record<BendAllowance["kind"], Card["tone"]>> = { allowed: "plain", warned: "attention", blocked: "refusal" };

/** A bend: what the gauge reads after it, and whether the head bears it. */
export function bendReply(facts: BendFacts): Reply {
  const { allowance } = facts;
  return reply(
    calcCard({
      view: "bend",
      title: titleOf(facts),
      tone: facts.answer.kind === "refused" && allowance.kind === "allowed" ? "attention" : tones[allowance.kind],
      inputs: bendInputs(facts.inputs),
      lines: [...resultLines(facts), ...bendAllowanceLines(facts)],
      fields: [
        { label: "Limits", value: line(limitWords(allowance.limits)) },
        { label: "Source", value: line(limitsSource) },
      ],
      leavesOut:
        "loft and bounce are exact, offset is good to 0.2 mm a degree. A bend in one plane moves the other a little: measure both again on the same gauge. It says nothing of cracks.",
      data: bendData(facts),
    }),
  );
}
