import type { Shortage } from "../../core/buildSheet/plan.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import type { OrderFault } from "../operations/plannedClub.ts";
import { clubWords, sheetName, shown } from "./shown.ts";

export const quantityWords: Readonly<Record<string, string>> = {
  headModel: "head",
  squaredLoftDeg: "loft",
  soledFaceDeg: "face",
  seatedLieDeg: "lie",
  bounceDeg: "bounce",
  lengthMm: "length",
  swingWeightPoints: "swing weight",
  totalMassG: "total",
  headMassG: "head weight",
  tipTrimMm: "tip",
  tipTrim: "tip",
  stampedLoftDeg: "stamp",
  sleeveMark: "sleeve",
  gripAt2InMm: "grip at 2 in",
  gripAt6InMm: "grip at 6 in",
  balancePointMm: "balance",
  frequencyCpm: "frequency",
};

const words = (quantities: readonly string[]): string => quantities.map((quantity) => quantityWords[quantity] ?? quantity).join(", ");

const kindDoes: Readonly<Record<string, string>> = {
  turn: "a mark or a loft, such as: strong 1",
  regrip: "a grip, such as: gorse standard",
  bend: "a loft or a lie, such as: 1 weak, 2 flat",
  grind: "a bounce, a grind or a note, such as: 2 less bounce",
  stamp: "the text to stamp",
  check: "a club",
  repair: "what is wrong, such as: head loose",
};

type Alike = NonNullable<Shortage["alike"]>[number];

const signed = (value: number, unit: string): string => `${value < 0 ? "−" : "+"}${shown.angle(Math.abs(value))} ${unit}`;

/** How a part differs from the one wanted: it is never the same. */
function differsBy({ differences }: Alike): string {
  const words: readonly (string | null)[] =
    "balanceMm" in differences
      ? [
          signed(differences.massG, "g"),
          signed(differences.balanceMm, "mm balance"),
          differences.frequencyCpm === null ? null : signed(differences.frequencyCpm, "cpm"),
          differences.flexDiffers ? "another flex" : null,
          differences.tipDiffers ? "another tip" : null,
        ]
      : [signed(differences.massG, "g")];
  return words.filter((word) => word !== null).join(", ");
}

const unfitWords: Readonly<Record<string, string>> = {
  family: "made for other clubs",
  tip: "another tip",
  sleeve: "on another sleeve",
  logo: "logo wrong at that mark",
  tipTrim: "tipped too far",
  length: "too short",
  rib: "rib otherwise",
  core: "core does not go on the butt",
};

function shortageWords({ part, wanted, nearest, unfit = [], elsewhere = [], alike = [] }: Shortage): string {
  const why = unfit.length === 0 ? "" : ` that fits (${unfit.map((reason) => unfitWords[reason] ?? reason).join(", ")})`;
  const there = elsewhere.map(({ place, free }) => `${free} in ${place}`);
  const near =
    alike.length > 0
      ? [`nearest, and not the same: ${alike.map((one) => `${one.row.model.name} (${differsBy(one)}; ${one.row.place})`).join(", ")}`]
      : nearest.length > 0
        ? [`nearest ${nearest.join(", ")}`]
        : [];
  return [`No ${part} ${wanted} free here${why}`, ...there, ...near].join("; ");
}

/** Why an order cannot be built or done as written, with what would do. */
export function faultWords(fault: OrderFault, leans = false): string {
  switch (fault.code) {
    case "missing":
      return `Still needed: ${words(fault.quantities)}${leans ? "" : ". Or add: like gamer"}`;
    case "short":
      return fault.shortages.map(shortageWords).join("; ");
    case "shaft-too-short":
      return `Shaft too short: ${shown.both(fault.rawMm)} raw, ${shown.both(fault.neededMm)} needed`;
    case "tip-section-too-short":
      return `Tip ${shown.both(fault.wantedTrimMm)} is too much: at most ${shown.both(fault.allowedTrimMm)}`;
    case "taper-not-tip-trimmed":
      return "A taper tip is not tip-trimmed: leave tip out";
    case "stays-in-swap":
      return `A swap keeps ${words(fault.quantities)}: use build, or leave it out`;
    case "stays":
      return `A ${fault.kind} leaves ${words(fault.quantities)} as it is: leave it out, or order what changes it`;
    case "needs-reference":
      return `${words([fault.quantity])} leans on a club whose ${words([fault.quantity])} is not known: write the value`;
    case "needs-record":
      return `${words(fault.quantities)} is not on record: write what it should be`;
    case "out-of-range":
      return `${words([fault.quantity])} comes to ${shown.angle(fault.value)}: ${fault.min} to ${fault.max} would do`;
    case "no-reference":
      return `No ${fault.from === "order" ? "such order" : fault.from} ${clubWords(fault.club)} on record: write the values`;
    case "no-such-club":
      return `No ${clubWords(fault.club)} on record with a head that is known: check it first, or build a new one`;
    case "nothing-asked":
      return `Still needed: ${kindDoes[fault.kind] ?? "what to do"}`;
    case "no-sleeve":
      return "Its shaft is bonded into the hosel: there is no sleeve to turn. A bend or another head would do";
    case "sleeve-unknown":
      return "Which sleeve is on it is not on record: look first, then write the mark";
    case "mark-unknown":
      return `No mark ${fault.mark} on its sleeve: ${fault.known.join(", ")}`;
    case "already-there":
      return `It stands at ${fault.mark}, and no turn comes nearer: another head would do (swap)`;
    case "bend-blocked":
      return `Past the ${fault.plane} limit: ${shown.angle(fault.totalDeg)} with all its bends, ${shown.angle(fault.limitDeg)} at most. Another head would do`;
    case "maker-does-not-allow":
      return `A ${fault.family} is not bent unless its maker says how far: a turn or another head would do`;
    case "needs-skill":
      return `A bonded ${fault.family} is bent only by a technician who has the skill`;
    case "bounce-goes-with-loft":
      return bounceWords(fault);
    case "wrong-family":
      return `No ${fault.kind} on a ${fault.family}: ${fault.accepted.join(", ")} only`;
    case "stamp-too-long":
      return `${fault.count} letters are too many to stamp: ${fault.max} at most`;
  }
}

/** Bending moves bounce with loft, one for one: what it can give, and what else would. */
function bounceWords(fault: Extract<OrderFault, { readonly code: "bounce-goes-with-loft" }>): string {
  const { nearest, wantedBounceDeg, loftAtWantedBounceDeg } = fault;
  const comes =
    nearest.squaredLoftDeg === null || nearest.bounceDeg === null
      ? ""
      : ` At ${shown.angle(nearest.squaredLoftDeg)} it comes to ${shown.angle(nearest.bounceDeg)};`;
  return `Bounce goes with loft.${comes} ${shown.angle(wantedBounceDeg)} comes at loft ${shown.angle(loftAtWantedBounceDeg)}, or by another grind or sole work by a qualified grinder`;
}

/** The faults of an order: of several clubs each says whose it is, alike ones said once. */
export function faultLines({ faults, request }: Pick<OrderFacts, "faults" | "request">, several: boolean): readonly string[] {
  const byWords = new Map<string, string[]>();
  for (const { club, copy, fault } of faults) {
    const said = faultWords(fault, request.like !== null);
    byWords.set(said, [...(byWords.get(said) ?? []), sheetName({ club, copy })]);
  }
  return [...byWords].map(([said, clubs]) => (several ? `${[...new Set(clubs)].join(", ")}: ${said}` : said));
}
