import { inRange } from "../quantity/inRange.ts";

const DOUBLING_C = 10;
const LONGEST_SHEET_MIN = 7 * 24 * 60;

const temperature = (value: number, field: string) => inRange(value, { field, unit: "°C", min: 5, max: 45 });

/**
 * How long an adhesive takes in another temperature than its sheet's.
 *
 *     t = t_sheet · 2^((T_sheet − T_room) / 10)
 *
 * Rule of thumb: the rate doubles with every 10 °C. A reaction with 50 kJ/mol agrees within 13 % from 5 to 45 °C of a sheet
 * at 23 °C; one with 100 kJ/mol takes 4.1 times as long at 13 °C, not twice. A sheet with its own figures goes first.
 *
 * @param sheetMin - t_sheet in min
 * @param sheetC - T_sheet in °C
 * @param roomC - T_room in °C
 * @returns min
 * @throws {DomainError} `quantity-out-of-range` when the wait is not 0 min to a week or a temperature not 5 to 45 °C
 * @see fixtures/published/waits.json
 */
export function cureMinutes(sheetMin: number, sheetC: number, roomC: number): number {
  const wait = inRange(sheetMin, { field: "sheetMin", unit: "min", min: 0, max: LONGEST_SHEET_MIN });
  return wait * 2 ** ((temperature(sheetC, "sheetC") - temperature(roomC, "roomC")) / DOUBLING_C);
}
