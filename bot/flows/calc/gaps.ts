import { loftGaps } from "../../../core/bag/loftGaps.ts";
import { progressions } from "../../../core/bag/progressions.ts";
import type { SpecClub } from "../../../core/bag/specClub.ts";
import { type ClubName, clubFamily, instant } from "../../../core/kinds.ts";
import { degrees, millimetres } from "../../../core/quantity/units.ts";
import type { BagRef } from "../../boundary/calc/bagRefAt.ts";
import { assumed, needed, type Understood } from "../../boundary/calc/fields.ts";
import { readGaps, type TypedLoft } from "../../boundary/calc/readGaps.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { type GapRow, gapsReply, type SetFacts } from "../../replies/calc/gapsCard.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { findBag } from "./findBag.ts";
import { matchedInertia, matchedSwingWeight, weighedSet } from "./matchedSet.ts";
import { namedPlayers } from "./namedPlayers.ts";

const EXAMPLE = "4i 24 5i 27 6i 31 7i 35 8i 39 9i 43 pw 47 52 56 60";
const LEAST_CLUBS = 2;

/** A club of known name with its measured squared loft, or without one. */
interface LoftedClub {
  readonly club: ClubName;
  readonly label: string;
  readonly loftDeg: number | null;
}

export const gaps = defineCalcView({
  name: "gaps",
  summary: "lofts from club to club, narrow or wide ones",
  takes: [
    "Clubs with their measured lofts: pw 47, gw 52; a loft alone from 46 to 64 is a wedge; a club alone was not measured",
    "Or a bag of the record: oxtoby, oxtoby irons, oxtoby wedges",
  ],
  examples: [EXAMPLE, "pw 47, gw 52", "oxtoby"],
  answer: (text, context) => {
    const { bag, clubs, faults, understood } = readGaps(text, namedPlayers(context));
    const lacking = faults.length === 0 && bag === null && clubs.length < LEAST_CLUBS ? [needed("two clubs with their lofts, or a player")] : [];
    if (faults.length + lacking.length > 0) return calcFaultsReply("gaps", [...faults, ...lacking], understood, EXAMPLE);
    return bag === null ? ofTyped(clubs, understood) : ofBag(bag, context);
  },
});

function ofTyped(clubs: readonly TypedLoft[], understood: readonly Understood[]): Reply {
  const lofted = clubs.map(({ club, label, loft }) => ({ club, label, loftDeg: loft?.value ?? null }));
  const wood = clubs.some(({ club }) => isWood(club)) ? [assumed("woods' lofts", "squared, sleeve as set", "")] : [];
  return gapsReply({ named: null, inputs: [...understood, ...wood], ...gapsOf(lofted), measured: null, set: null });
}

function ofBag(ref: BagRef, context: Context): Reply {
  const bag = findBag(ref, context);
  if (bag.kind === "refused") return bag.reply;
  const lofted = bag.clubs.map(({ club, squaredLoftDeg }) => ({ club, label: club, loftDeg: squaredLoftDeg }));
  return gapsReply({
    named: bag.shown,
    inputs: [bag.input],
    ...gapsOf(lofted),
    measured: measuredOf(bag.clubs, context),
    set: setFacts(bag.clubs, context),
  });
}

const isWood = (club: ClubName): boolean => ["driver", "fairway"].includes(clubFamily(club) ?? "");

/** Core's rows with what people call each club; two bare wedges may share a name, so that the order tells them apart. */
function gapsOf(clubs: readonly LoftedClub[]): { readonly rows: readonly GapRow[]; readonly missing: readonly string[] } {
  const found = loftGaps(clubs.map(({ club, loftDeg }) => ({ club, squaredLoftDeg: loftDeg === null ? null : degrees(loftDeg) })));
  const measured = clubs
    .flatMap(({ club, label, loftDeg }) => (loftDeg === null || clubFamily(club) === "putter" ? [] : [{ club, label, loftDeg }]))
    .sort((one, other) => one.loftDeg - other.loftDeg || (one.club < other.club ? -1 : 1));
  const rows = found.gaps.flatMap((gap, index): readonly GapRow[] => {
    const [stronger, weaker] = measured.slice(index, index + 2);
    return stronger === undefined || weaker === undefined ? [] : [{ ...gap, stronger, weaker }];
  });
  return { rows, missing: found.missing };
}

function measuredOf(clubs: readonly SpecClub[], { now }: Context) {
  const known = clubs.flatMap(({ measuredAt, gauge }) => (measuredAt === null ? [] : [{ measuredAt, gauge }]));
  const gauges = [...new Set(known.map(({ gauge }) => gauge ?? "an unnamed gauge"))];
  return { gauges, oldestAt: instant(Math.min(now, ...known.map(({ measuredAt }) => measuredAt))), now };
}

/** Irons step evenly, their pitching wedge among them; woods and other wedges of most sets do not. */
function setFacts(clubs: readonly SpecClub[], context: Context): SetFacts | null {
  const irons = clubs.filter(({ club }) => clubFamily(club) === "iron" || club === "pw");
  if (irons.length < LEAST_CLUBS) return null;
  const steps = progressions(
    irons.map(({ club, lengthMm, seatedLieDeg }) => ({
      club,
      lengthMm: lengthMm === null ? null : millimetres(lengthMm),
      seatedLieDeg: seatedLieDeg === null ? null : degrees(seatedLieDeg),
    })),
  );
  const weighed = context.read((reader) => weighedSet(reader, irons));
  return {
    unit: context.actor.lengthUnit,
    steps,
    swingWeight: matchedSwingWeight(weighed, null),
    inertia: matchedInertia(weighed, null),
    isInertiaMeasured: weighed.isInertiaMeasured,
  };
}
