import type { SpecClub } from "../../../core/bag/specClub.ts";
import { bendAllowed } from "../../../core/head/bendAllowed.ts";
import { bendFor } from "../../../core/head/bendFor.ts";
import { USUAL_BEND_HEIGHT_MM } from "../../../core/head/usualBendHeight.ts";
import { degrees, millimetres } from "../../../core/quantity/units.ts";
import { bendFields } from "../../boundary/calc/bendFields.ts";
import { bendText } from "../../boundary/calc/bendText.ts";
import type { AngleChange } from "../../boundary/calc/changeOf.ts";
import { needed } from "../../boundary/calc/fields.ts";
import { type BendChanges, type BendWords, readBend } from "../../boundary/calc/readBend.ts";
import { readCalc } from "../../boundary/calc/readCalc.ts";
import type { Reply } from "../../chat/types.ts";
import { bendInputs, bendReply } from "../../replies/calc/bendCard.ts";
import type { BendFacts } from "../../replies/calc/bendFacts.ts";
import { calcFaultsReply } from "../../replies/calc/calcFaultsReply.ts";
import { bendInputsOf } from "./bendInputsOf.ts";
import { defineCalcView } from "./defineCalcView.ts";
import { findClub } from "./findClub.ts";
import { headMade } from "./headMade.ts";
import { namedPlayers } from "./namedPlayers.ts";

const EXAMPLE = "56 to 54, bounce 10";

/** What nobody said and no answer rests on: only the changes count, and an angle so marked is never shown. */
const UNTOLD = { squaredLoftDeg: 45, seatedLieDeg: 62, bounceDeg: 10 } as const;

export const bend = defineCalcView({
  name: "bend",
  summary: "bounce, offset, limits of a bend of loft or lie",
  takes: [
    "56 to 54, or loft 56, 2 stronger; lie 64 to 63, or 1 flat; bounce 10, or 56/10",
    "offset in mm; height of the bend above the leading edge in mm; bent 1 before; maker 2 (how far its maker allows)",
    "Metal: carbon, 431, 304, 17-4, titanium (stainless alone counts as 17-4). Made: forged, cast, hollow, multi-material, bonded",
    "Or a club of the record: oxtoby sw 1 stronger. A wish for bounce: 56/10, bounce to 8",
  ],
  examples: [
    EXAMPLE,
    "56/10 to 54, what bounce?",
    "loft 56, bounce 10 to 8",
    "lie 64 to 63 forged carbon bent lie 1 before",
    "oxtoby sw, 1 stronger",
  ],
  answer: (text, context) => {
    const question = readCalc(bendText(text), bendFields, { players: namedPlayers(context) });
    const { club, values, understood } = question;
    const found = club === null ? null : findClub(club, context);
    if (found?.kind === "refused") return found.reply;
    const changes = readBend(values, found?.club ?? null);
    const inputs = found === null ? understood : [found.input, ...understood];
    const faults = [...question.faults, ...changes.faults];
    const missing = faults.length > 0 || asksSomething(changes) ? [] : [needed("what should change: 56 to 54, or 1 flat")];
    if (faults.length + missing.length > 0) return calcFaultsReply("bend", [...faults, ...missing], bendInputs(inputs), EXAMPLE);
    return answered(values, changes, { named: found?.shown ?? null, inputs, club: found?.club ?? null });
  },
});

interface Known extends Pick<BendFacts, "named" | "inputs"> {
  readonly club: SpecClub | null;
}

const asksSomething = ({ loft, lie, bounce }: BendChanges): boolean => [loft, lie, bounce].some(({ changeDeg }) => changeDeg !== null);
const wished = ({ fromDeg, changeDeg }: AngleChange, untoldDeg: number) => (changeDeg === null ? null : degrees((fromDeg ?? untoldDeg) + changeDeg));

function answered(values: BendWords, changes: BendChanges, { named, inputs, club }: Known): Reply {
  const made = headMade(values, club);
  const { loft, lie, bounce } = changes;
  const offsetMm = values.offset?.value ?? club?.offsetMm ?? null;
  const head = {
    squaredLoftDeg: degrees(loft.fromDeg ?? UNTOLD.squaredLoftDeg),
    seatedLieDeg: degrees(lie.fromDeg ?? UNTOLD.seatedLieDeg),
    bounceDeg: degrees(bounce.fromDeg ?? UNTOLD.bounceDeg),
    offsetMm: offsetMm === null ? null : millimetres(offsetMm),
    bendPointHeightMm: millimetres(values.height?.value ?? USUAL_BEND_HEIGHT_MM),
  };
  const wish = {
    squaredLoftDeg: wished(loft, UNTOLD.squaredLoftDeg),
    seatedLieDeg: wished(lie, UNTOLD.seatedLieDeg),
    bounceDeg: wished(bounce, UNTOLD.bounceDeg),
  };
  const answer = bendFor(head, wish);
  const { bend: move } = answer.kind === "bend" ? answer : answer.nearest;
  const facts: BendFacts = {
    named,
    inputs: bendInputsOf({ values, changes, club, made, inputs }),
    loftDeg: loft.fromDeg,
    lieDeg: lie.fromDeg,
    bounceDeg: bounce.fromDeg,
    answer,
    allowance: bendAllowed(made.head, move),
    onSleeve: (club?.sleeveModel ?? null) !== null,
  };
  return bendReply(facts);
}
