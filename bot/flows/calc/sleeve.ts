import type { SleeveModel } from "../../../core/buildSheet/parts.ts";
import { onClock } from "../../../core/head/clock.ts";
import { nearestMark } from "../../../core/head/nearestMark.ts";
import type { Sleeve } from "../../../core/head/sleeve.ts";
import type { SleeveTilt } from "../../../core/head/sleeveTilt.ts";
import { assumed, needed, onRecord, type Understood } from "../../boundary/calc/fields.ts";
import { readSleeve, type SleeveQuestion } from "../../boundary/calc/readSleeve.ts";
import type { Reply } from "../../chat/types.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { sleeveInputs, sleeveReply, wishInputs } from "../../replies/calc/sleeveCard.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { type FoundClub, findClub } from "./findClub.ts";
import { namedPlayers } from "./namedPlayers.ts";
import { recordedHead, type SleeveHead, typedHead } from "./sleeveHead.ts";
import { sleeveMarkings } from "./sleeveMarkings.ts";
import { knownSleeves, sleeveOfRecord } from "./sleeveOfRecord.ts";
import { sleeveRows } from "./sleeveRows.ts";
import { sleeveWish } from "./sleeveWish.ts";
import { type TypedSleeve, typedSleeve } from "./typedSleeve.ts";

type Found = Extract<FoundClub, { kind: "found" }>;

const EXAMPLE = "loft 9, lie 58, face 0, tilt 1.5, hand right";

export const sleeve = defineCalcView({
  name: "sleeve",
  summary: "loft, face and lie at every mark; mark for a wish",
  takes: [
    "The bare head: loft and face soled, lie, hand. Its sleeve: tilt 1.5, or rated 2 (loft it takes off), or its name: sleeve cairn driver",
    "Two pieces: ring 0.75, tilt 0.75. One place: clock 45. standard flat or upright; logo up or down; rib down or none",
    "Or a club of the record: oxtoby driver",
    "With any of them a wish: want 10 true, want 1/2 stronger, want face 1 open, want 1 upright",
  ],
  examples: [
    EXAMPLE,
    "oxtoby driver",
    "oxtoby driver want 1/2 stronger",
    "loft 9 sleeve cairn driver want 8.5 true, 1 open",
    "loft 10 rated 2 left hand",
  ],
  answer: (text, context) => {
    const sleeves = knownSleeves(context);
    const names = sleeves.map(({ name }) => name);
    const question = readSleeve(text, names, namedPlayers(context));
    const { asked } = question;
    const found = asked.club === null ? null : findClub(asked.club, context);
    if (found?.kind === "refused") return found.reply;
    const printed = sleeveOfRecord(sleeves, question.sleeveName, found?.club ?? null);
    const head = found === null ? typedHead(asked) : recordedHead(found.club, found.hand, tiltAtMark(printed, found));
    const typed = head === null ? null : typedSleeve(asked, head.head.designLieDeg, head.head.hand);
    const missing = [
      ...(head === null ? ["loft of the head, or a club of the record"] : []),
      ...(printed === null && asked.values.tilt === undefined && asked.values.rated === undefined ? [sleeveNeeded(found)] : []),
    ];
    const inputs = [
      ...(found === null ? [] : [found.input]),
      ...asked.understood,
      ...(printed === null ? [] : [onRecord("sleeve", printed.name, "")]),
    ];
    const faults = question.faults.length > 0 ? question.faults : missing.map(needed);
    if (head === null || faults.length > 0) return calcFaultsReply("sleeve", faults, sleeveInputs(inputs), EXAMPLE);
    return answered(question, { head, found, sleeve: typed ?? printedSleeve(printed), inputs });
  },
});

const sleeveNeeded = (found: Found | null): string =>
  `${found === null ? "" : `the sleeve, ${found.shown} has none on record: `}tilt, rated, or a sleeve by name`;
const printedSleeve = (model: SleeveModel | null): TypedSleeve | null => (model === null ? null : { sleeve: model, assumed: [] });

/** How the sleeve leans the shaft where the club of the record stands. */
function tiltAtMark(model: SleeveModel | null, { club }: Found): SleeveTilt | null {
  const mark = model?.marks.find((known) => known.mark === (club.sleeveMark ?? model.standardMark));
  return model === null || mark === undefined ? null : { tiltDeg: model.tiltDeg, clockDeg: mark.clockDeg };
}

interface Known {
  readonly head: SleeveHead;
  readonly found: Found | null;
  readonly sleeve: TypedSleeve | null;
  readonly inputs: readonly Understood[];
}

function answered(question: SleeveQuestion, { head: { head, inputs: headInputs }, found, sleeve: set, inputs }: Known): Reply {
  if (set === null) return calcFaultsReply("sleeve", [needed(sleeveNeeded(found))], sleeveInputs(inputs), EXAMPLE);
  const { values } = question.asked;
  const fromMark = markOf(set.sleeve, found?.club.sleeveMark ?? null);
  const { markings, assumed: markingsAssumed } = sleeveMarkings(question.asked, found?.club ?? null);
  const rows = sleeveRows(head, set.sleeve, fromMark, markings);
  const from = rows.find(({ mark }) => mark === fromMark);
  const wish = question.wished === null || from === undefined ? null : sleeveWish(question.wished, from.attitude);
  if (wish?.kind === "faults") return calcFaultsReply("sleeve", wish.faults, sleeveInputs(inputs), EXAMPLE);
  const clock = values.clock === undefined ? null : onClock(values.clock.value);
  return sleeveReply({
    named: found?.shown ?? null,
    inputs: sleeveInputs([
      ...inputs,
      ...headInputs,
      ...set.assumed,
      ...markingsAssumed,
      ...(wish?.keepsLie === true ? [assumed("lie", "as it stands", "")] : []),
    ]),
    wishInputs: wishInputs(question.wished?.understood ?? []),
    head,
    tiltDeg: "ring" in set.sleeve ? set.sleeve.sleeve.tiltDeg : set.sleeve.tiltDeg,
    ringTiltDeg: "ring" in set.sleeve ? set.sleeve.ring.tiltDeg : null,
    fromMark,
    onlyMark: clock === null ? null : (rows.find(({ clockDeg }) => onClock(clockDeg) === clock)?.mark ?? null),
    rows,
    wish: wish?.wish ?? null,
    nearest: wish === null ? [] : nearestMark(head, set.sleeve, wish.wish),
  });
}

const printedMarks = (sleeve: Sleeve): readonly string[] => ("ring" in sleeve ? [] : sleeve.marks.map(({ mark }) => mark));
const markOf = (sleeve: Sleeve, recorded: string | null): string =>
  recorded !== null && printedMarks(sleeve).includes(recorded) ? recorded : sleeve.standardMark;
