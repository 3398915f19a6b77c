import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { kilogramSquareCentimetres, type Millimetres, millimetres } from "../quantity/units.ts";
import { checkedComponents } from "./checkedComponents.ts";
import { type BuiltClub, type CutShaft, type PartsAroundHead, type SmallPart, type StagedComponent, smallParts } from "./clubParts.ts";
import { GRAM_SQUARE_MM_PER_KG_SQUARE_CM } from "./clubSums.ts";
import { headFromCap } from "./headComponent.ts";

/** Common practice, no source: 3 in. */
const GRIP_GYRATION_MM = millimetres(76.2);
/** Ways of measuring a length differ by a few mm, and a plan may be an inch off: what is further apart is another club. */
const METHODS_APART_MM = 60;
const PLACES = ["cap", "bore", "head-centre"] as const;
const NAMES = Object.keys(smallParts) as (keyof typeof smallParts)[];

function shaftComponent(shaft: CutShaft, capMm: Millimetres): StagedComponent {
  const lengthMm = inRange(shaft.lengthMm, { field: "shaft lengthMm", unit: "mm", min: 300, max: 1500 });
  const balanceMm = inRange(shaft.balanceFromButtMm, { field: "shaft balanceFromButtMm", unit: "mm", min: 0, max: lengthMm });
  const rodKgCm2 = (shaft.massG * lengthMm ** 2) / 12 / GRAM_SQUARE_MM_PER_KG_SQUARE_CM;
  return {
    name: "shaft",
    stage: "ready",
    massG: shaft.massG,
    fromCapMm: millimetres(capMm + balanceMm),
    ownInertiaKgCm2: shaft.ownInertiaKgCm2 ?? kilogramSquareCentimetres(rodKgCm2),
  };
}

function gripComponent(grip: PartsAroundHead["grip"]): StagedComponent {
  const gyrationMm = inRange(grip.gyrationMm ?? GRIP_GYRATION_MM, { field: "gripGyrationMm", unit: "mm", min: 0, max: 300 });
  return {
    name: "grip",
    stage: "grip",
    massG: grip.massG,
    fromCapMm: grip.centreFromCapMm,
    ownInertiaKgCm2: kilogramSquareCentimetres((grip.massG * gyrationMm ** 2) / GRAM_SQUARE_MM_PER_KG_SQUARE_CM),
  };
}

/** A part in the head lies as far off the shaft as the head's centre does, every other one on its axis. */
function smallComponent({ name, massG, at }: SmallPart, parts: PartsAroundHead): StagedComponent {
  const { stage } = smallParts[name];
  const known = oneOf(at.from, PLACES, `${name} from`);
  if (at.from === "head-centre") {
    const { headCentre, playingLengthMm } = parts;
    return { name, stage, massG, fromCapMm: headFromCap(playingLengthMm, headCentre), fromAxisMm: headCentre.fromAxisMm };
  }
  const fromCapMm = at.from === "cap" ? at.mm : millimetres(parts.playingLengthMm - parts.boreToGroundMm - at.upShaftMm);
  return {
    name,
    stage,
    massG,
    fromCapMm: millimetres(inRange(fromCapMm, { field: `${name} from ${known}`, unit: "mm", min: 0, max: parts.playingLengthMm })),
  };
}

/**
 * Everything around a head as components, each at its place from the end of the grip cap.
 *
 *     shaft: x = cap + balance from the butt, I = m·L²/12 unless known     grip: I = m·k²
 *     sleeve, ferrule, glue, tip weight: x = L − bore to ground − place above the bore
 *
 * Parts on one axis, small parts as points. A ferrule and glue left out lose 1 point on an iron, the tape half a point. Shaft, bore and
 * cap make up the length within 60 mm, which is room for every way of measuring one; no part lies past the length.
 *
 * @param parts - lengths and places in mm, masses in g, inertia in kg·cm²
 * @returns the components by the end of the club they belong to
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible, a part lies past the end of the club or the shaft fits no such length
 * @throws {DomainError} `quantity-unreadable` when a small part or its place is unknown
 * @see fixtures/published/workedSet.json
 */
export function componentsAroundHead(parts: PartsAroundHead): Omit<BuiltClub<StagedComponent>, "head"> {
  inRange(parts.playingLengthMm, { field: "playingLengthMm", unit: "mm", min: 400, max: 1500 });
  inRange(parts.boreToGroundMm, { field: "boreToGroundMm", unit: "mm", min: 0, max: 200 });
  inRange(parts.grip.capMm, { field: "capMm", unit: "mm", min: 0, max: 50 });
  inRange(parts.grip.centreFromCapMm, { field: "grip centreFromCapMm", unit: "mm", min: 0, max: parts.playingLengthMm });
  inRange(parts.shaft.lengthMm + parts.boreToGroundMm + parts.grip.capMm - parts.playingLengthMm, {
    field: "shaft, bore and cap past playingLengthMm",
    unit: "mm",
    min: -METHODS_APART_MM,
    max: METHODS_APART_MM,
  });
  headFromCap(parts.playingLengthMm, parts.headCentre);
  const at = (end: "head" | "butt") =>
    parts.small.filter(({ name }) => smallParts[oneOf(name, NAMES, "small part")].end === end).map((part) => smallComponent(part, parts));
  const around = {
    headEnd: at("head"),
    shaft: shaftComponent(parts.shaft, parts.grip.capMm),
    shaftLengthMm: parts.shaft.lengthMm,
    grip: gripComponent(parts.grip),
    capMm: parts.grip.capMm,
    buttEnd: at("butt"),
  };
  checkedComponents([around.shaft, around.grip, ...around.headEnd, ...around.buttEnd]);
  return around;
}
