/** Minutes before a club may be handled, swung gently, and swung in full. */
interface Wait {
  readonly handleMin: number;
  readonly lightPlayMin: number;
  readonly fullPlayMin: number;
}

/** The temperature the minutes of adhesives hold at; sheets say 22 to 27 °C. */
export const SHEET_TEMPERATURE_C = 23;
const OVERNIGHT_MIN = 12 * 60;
const DAY_MIN = 24 * 60;

/**
 * Adhesives, until a shop writes what its own products' data sheets say.
 *
 * `quickEpoxy` and `ironEpoxy` to handle: common practice, no source (6 min warmed, 20 min). `ironEpoxy` in play overnight, read
 * as 12 h. `slowEpoxy` in full after 24 h as published; overnight to handle is common practice, no source.
 */
export const adhesiveWaits = {
  quickEpoxy: { handleMin: 6, lightPlayMin: 15, fullPlayMin: 15 },
  ironEpoxy: { handleMin: 20, lightPlayMin: OVERNIGHT_MIN, fullPlayMin: OVERNIGHT_MIN },
  slowEpoxy: { handleMin: OVERNIGHT_MIN, lightPlayMin: DAY_MIN, fullPlayMin: DAY_MIN },
} as const satisfies Readonly<Record<string, Wait>>;
export type Adhesive = keyof typeof adhesiveWaits;

/**
 * Ways of putting a grip on, until a shop writes what its own products' data sheets say. Common practice, no source.
 *
 * Where practice gives a span, the floor is its longer end: air 0 to 4 min to handle and 10 to 15 before hard swings,
 * ordinary solvent 2 to 4 h. Overnight is read as 12 h.
 */
export const gripWaits = {
  air: { handleMin: 4, lightPlayMin: 15, fullPlayMin: 15 },
  quickSolvent: { handleMin: 4, lightPlayMin: 120, fullPlayMin: OVERNIGHT_MIN },
  waterActivated: { handleMin: 60, lightPlayMin: 60, fullPlayMin: 60 },
  solvent: { handleMin: 10, lightPlayMin: 240, fullPlayMin: OVERNIGHT_MIN },
} as const satisfies Readonly<Record<string, Wait>>;
export type GripMethod = keyof typeof gripWaits;
