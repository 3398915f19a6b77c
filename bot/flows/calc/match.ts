import { compareClubs } from "../../../core/bag/compareClubs.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { ClubRef } from "../../boundary/calc/clubRefAt.ts";
import { assumed } from "../../boundary/calc/fields.ts";
import { type MatchQuestion, readMatch } from "../../boundary/calc/readMatch.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { checkTolerances } from "../../operations/shopTolerances.ts";
import { noTwinReply } from "../../replies/calc/bagRefusals.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { lengthWords } from "../../replies/calc/calcNumbers.ts";
import { type ComparedClub, type MatchFacts, matchReply } from "../../replies/calc/matchCard.ts";
import { setValue } from "../../replies/calc/setMatch.ts";
import { setMatchReply, tooFewReply } from "../../replies/calc/setMatchCard.ts";
import { findOrder } from "../findOrder.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { findBag } from "./findBag.ts";
import { type FoundClub, findClub } from "./findClub.ts";
import { matchedInertia, matchedSwingWeight, weighedSet } from "./matchedSet.ts";
import { namedPlayers } from "./namedPlayers.ts";
import { typedPair } from "./typedPair.ts";

type Question<K extends MatchQuestion["kind"]> = Extract<MatchQuestion, { kind: K }>;
type Found = Extract<FoundClub, { kind: "found" }>;
type NamedClub = Found & { readonly ref: ClubRef };

const EXAMPLE = "oxtoby driver";

export const match = defineCalcView({
  name: "match",
  summary: "two clubs compared; a set to one swing weight",
  takes: [
    "A club of the record against its backup: oxtoby driver; or against another: oxtoby driver, toll driver; order 1",
    "Values in pairs: loft 9.2 9.4, swing d3 d2, length 45 45 1/16",
    "A set to one value: oxtoby irons d2, oxtoby irons inertia 2700; without a value to its middle",
  ],
  examples: [EXAMPLE, "oxtoby driver, toll driver", "loft 9.2 9.4, swing d3 d2, length 45 45 1/16", "oxtoby irons d2"],
  answer: (text, context) => {
    const question = readMatch(text, namedPlayers(context));
    if (question.faults.length > 0) return calcFaultsReply("match", question.faults, question.kind === "clubs" ? [] : question.understood, EXAMPLE);
    if (question.kind === "clubs") return ofClubs(question, context);
    return question.kind === "set" ? ofSet(question, context) : ofTyped(question, context);
  },
});

function ofClubs({ refs: [first, second] }: Question<"clubs">, context: Context): Reply {
  const one = findClub(first, context);
  if (one.kind === "refused") return one.reply;
  const twin = second ?? counterpart(first, one, context);
  const other = findClub(twin, context);
  if (other.kind === "refused") return second === null && twin.kind === "bag" ? noTwinReply(one.shown, twin.from) : other.reply;
  /** A gamer is what the other should be like. */
  const isTurned = second === null && twin.kind === "bag" && twin.from === "gamer";
  const pair = [
    { ...one, ref: first },
    { ...other, ref: twin },
  ] as const;
  return ofPair(isTurned ? [pair[1], pair[0]] : pair, context);
}

function ofPair([one, other]: readonly [NamedClub, NamedClub], context: Context): Reply {
  const name = ({ input, shown: said }: Found) => ({ ...input, values: [{ written: said, unit: "" }], name: "" });
  return matchReply({
    ...compared(one.club, other.club, context),
    inputs: [name(one), name(other)],
    clubs: [comparedClub(one), comparedClub(other)],
  });
}

/** A gamer's backup, a backup's gamer, the gamer an order is built after. */
function counterpart(ref: ClubRef, found: Found, context: Context): ClubRef {
  if (ref.kind === "bag") return { ...ref, from: ref.from === "gamer" ? "backup" : "gamer" };
  const { playerId } = context.read((reader) => findOrder(reader, context, `${ref.number}`));
  const player = namedPlayers(context).find(({ id }) => id === playerId) ?? { id: playerId, name: "", aliases: [] };
  return { kind: "bag", player, club: found.club.club, from: "gamer" };
}

const comparedClub = ({ shown: said, hand, ref, club: { measuredAt, gauge } }: NamedClub): ComparedClub => ({
  shown: said,
  hand,
  isPlanned: ref.kind === "order",
  measuredAt,
  gauge,
});

function compared(one: SpecClub, other: SpecClub, { actor, now, read }: Context): Pick<MatchFacts, "unit" | "now" | "comparison" | "parts"> {
  const comparison = compareClubs(one, other, read(checkTolerances));
  const said = (club: SpecClub, part: (typeof comparison.differing)[number]): string => {
    const value = club[part];
    if (part === "tipTrimMm") return Number(value) === 0 ? "none" : lengthWords(Number(value), actor.lengthUnit);
    return typeof value === "boolean" ? (value ? "with" : "without") : String(value);
  };
  const parts = comparison.differing.map((part) => ({ part, values: [said(one, part), said(other, part)] as const }));
  return { unit: actor.lengthUnit, now, comparison, parts };
}

function ofTyped({ values, understood }: Question<"typed">, context: Context): Reply {
  const [one, other] = typedPair(values);
  const facts = compared(one, other, context);
  return matchReply({ ...facts, inputs: [...understood, assumed("both on", "one gauge and clamp", "")], clubs: null });
}

function ofSet({ bag: ref, values, understood }: Question<"set">, context: Context): Reply {
  const bag = findBag(ref, context);
  if (bag.kind === "refused") return bag.reply;
  const weighed = context.read((reader) => weighedSet(reader, bag.clubs));
  const found =
    values.inertia === undefined ? matchedSwingWeight(weighed, values.swing?.value ?? null) : matchedInertia(weighed, values.inertia.value);
  const inputs = [bag.input, ...understood];
  const named = `${bag.shown} ${ref.part}`;
  if (found === null) return tooFewReply(named, inputs, weighed.lacking);
  return setMatchReply({
    named,
    inputs: [
      ...inputs,
      ...(found.isMiddle ? [assumed("aim", `${setValue(found.quantity, found.target)}, the middle of the set`, "")] : []),
      assumed("steps of", 0.5, "g"),
    ],
    match: found,
    isInertiaMeasured: weighed.isInertiaMeasured,
    lacking: weighed.lacking,
  });
}
