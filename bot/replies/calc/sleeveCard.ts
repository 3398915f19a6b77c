import type { Attitude } from "../../../core/head/attitude.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Card, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { directedInputs, sides } from "./directedInputs.ts";
import { inputLines } from "./inputLines.ts";
import { facingWords } from "./leanWords.ts";
import { sleeveData } from "./sleeveData.ts";
import type { SleeveFacts, SleeveRow } from "./sleeveFacts.ts";
import { attitudeWords, nearestLines, RUNNERS_UP } from "./sleeveWishLines.ts";

/** What was written of head and sleeve, signs in words. */
export const sleeveInputs = (inputs: readonly Understood[]): readonly Understood[] => directedInputs(inputs, { "soled face": sides.face });

/** What was wished, signs in words. */
export const wishInputs = (inputs: readonly Understood[]): readonly Understood[] =>
  directedInputs(inputs, { "squared loft": sides.loft, "soled face": sides.face, "face by": ["more open", "more closed"], lie: sides.lie });

const rowLine = (row: SleeveRow, fromMark: string): Line => {
  const words = ` ${attitudeWords(row.attitude)}${row.mark === fromMark ? (row.standard ? " (standard)" : " (stands here)") : ""}`;
  return line({ strong: `${row.mark}:` }, words);
};

/** Of the many settings of two pieces those that go farthest, each once. */
function farthest(rows: readonly SleeveRow[], fromMark: string): readonly SleeveRow[] {
  const first = (of: (attitude: Attitude) => number) => [...rows].sort((one, other) => of(one.attitude) - of(other.attitude)).slice(0, 1);
  const chosen = [
    ...rows.filter(({ mark }) => mark === fromMark),
    ...first(({ squaredLoftDeg }) => squaredLoftDeg),
    ...first(({ squaredLoftDeg }) => -squaredLoftDeg),
    ...first(({ seatedLieDeg }) => -seatedLieDeg),
    ...first(({ seatedLieDeg }) => seatedLieDeg),
  ];
  return [...new Set(chosen)];
}

const change = (deg: number, [more, less]: readonly [string, string]): string | null => {
  const size = shown.angle(Math.abs(deg));
  return size === "0.0" ? null : `${size} ${deg > 0 ? more : less}`;
};

function turnWords({ markings }: SleeveRow): string {
  const rib = markings.ribClockDeg === null ? "" : `, rib ${facingWords(markings.ribClockDeg)}`;
  return `logo ${facingWords(markings.logoClockDeg)}${rib}`;
}

/** From standard, and where logo and rib end. */
function markField(row: SleeveRow): Card["fields"][number] {
  const { squaredLoftDeg, soledFaceDeg, seatedLieDeg } = row.fromStandard;
  const changes = [
    change(squaredLoftDeg, sides.loft),
    change(soledFaceDeg, ["more open", "more closed"]),
    change(seatedLieDeg, ["more upright", "flatter"]),
  ].filter((words) => words !== null);
  const from = row.standard ? "standard" : changes.length === 0 ? "as standard" : `${changes.join(", ")} than standard`;
  return { label: row.mark, value: line(`${from}; ${turnWords(row)}`) };
}

/** What a sleeve does at its marks, or the marks nearest to a wish. */
export function sleeveReply(facts: SleeveFacts): Reply {
  const { rows, onlyMark, fromMark, head, wish } = facts;
  const asked = onlyMark === null ? rows : rows.filter(({ mark }) => mark === onlyMark);
  const isTwoPieces = facts.ringTiltDeg !== null;
  const visible = isTwoPieces ? farthest(asked, fromMark) : asked;
  const best = facts.nearest[0];
  const nearest = facts.nearest.slice(0, 1 + RUNNERS_UP).flatMap((near) => rows.filter(({ mark }) => mark === near.mark));
  const name = facts.named ?? "Sleeve";
  return reply(
    calcCard({
      view: "sleeve",
      title: `${name}: ${best === undefined ? (onlyMark ?? `${rows.length} settings`) : `nearest is ${best.mark}`}`,
      inputs: facts.inputs,
      lines: [
        ...(wish === null ? [] : wishedLine(facts)),
        line("True: loft squared, lie seated. Face and lie soled"),
        ...(wish === null ? visible.map((row) => rowLine(row, fromMark)) : nearestLines(facts, turnWords)),
        ...(isTwoPieces && wish === null ? [line(`The farthest of ${rows.length} settings; add a wish: want 10 true`)] : []),
      ],
      fields: [
        { label: "Soled loft", value: line(`${shown.angle(head.soledLoftDeg)} at every mark`) },
        ...(wish === null || isTwoPieces
          ? []
          : [{ label: "All marks", value: line(rows.map((row) => `${row.mark} ${attitudeWords(row.attitude)}`).join("; ")) }]),
        ...(wish === null ? visible : nearest).map(markField),
      ],
      leavesOut:
        "a cambered sole, the seat of the sleeve and the bond move a real club by 0.2°, face bulge and roll come on top: a measured chart goes first. A degree of face is about 0.6 of loft, not one. Turning turns logo, rib and spine; every setting has to conform.",
      data: sleeveData(facts, asked),
    }),
  );
}

const wishedLine = ({ wishInputs: inputs }: SleeveFacts): readonly Line[] =>
  inputLines(inputs).map(([first, ...others]) => line({ strong: "Want " }, ...(first === undefined ? [] : others)));
