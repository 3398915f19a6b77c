import type { WaitFloors } from "../bench/benchTypes.ts";
import { inRange } from "../quantity/inRange.ts";
import { oneOf } from "../quantity/oneOf.ts";
import { cureMinutes } from "./cureMinutes.ts";
import { type Adhesive, adhesiveWaits, type GripMethod, gripWaits, SHEET_TEMPERATURE_C } from "./waits.ts";

const adhesives = Object.keys(adhesiveWaits) as readonly Adhesive[];
const gripMethods = Object.keys(gripWaits) as readonly GripMethod[];

/** What the floors of one order depend on. */
interface WaitQuestion {
  readonly adhesive: Adhesive;
  readonly gripMethod: GripMethod;
  readonly walkMin: number;
  /** Where the bond sets; left out, at the sheet's temperature. */
  readonly roomTemperatureC?: number;
}

/**
 * The waits nobody shortens, of one adhesive, one way of gripping and one venue.
 *
 *     t = max( t_sheet, t_sheet · 2^((T_sheet − T_room)/10) )   for the adhesive; grips as their sheet says
 *
 * A cold truck lengthens the adhesive's wait, a warm one never shortens it below the sheet. `cureMinutes` says how good the
 * exponent is.
 *
 * @param question - adhesive, way of gripping, minutes of the walk to the range, room temperature T in °C
 * @returns floors in minutes: to handle and to play in full
 * @throws {DomainError} `quantity-out-of-range` when the walk is not 0 to 240 min or the room not 5 to 45 °C,
 *   `quantity-unreadable` when the adhesive or the way of gripping is unknown
 * @see fixtures/published/waits.json
 */
export function floorsOf(question: WaitQuestion): WaitFloors {
  const adhesive = adhesiveWaits[oneOf(question.adhesive, adhesives, "adhesive")];
  const grip = gripWaits[oneOf(question.gripMethod, gripMethods, "gripMethod")];
  const roomC = question.roomTemperatureC ?? SHEET_TEMPERATURE_C;
  const atRoom = (sheetMin: number) => Math.max(sheetMin, cureMinutes(sheetMin, SHEET_TEMPERATURE_C, roomC));
  return {
    adhesiveHandleMin: atRoom(adhesive.handleMin),
    adhesivePlayMin: atRoom(adhesive.fullPlayMin),
    gripHandleMin: grip.handleMin,
    gripPlayMin: grip.fullPlayMin,
    walkMin: inRange(question.walkMin, { field: "walkMin", unit: "min", min: 0, max: 240 }),
  };
}
