const EIGHTH_DEG = 45;
const eighth = (clockDeg: number): number => ((Math.round(clockDeg / EIGHTH_DEG) % 8) + 8) % 8;

const leans = [
  "weaker",
  "weaker and upright",
  "upright",
  "stronger and upright",
  "stronger",
  "stronger and flat",
  "flat",
  "weaker and flat",
] as const;
const faces = ["facing the target", "up, target side", "up", "up, far side", "facing away", "down, far side", "down", "down, target side"] as const;

/** What a shaft does that leans to a place on the clock of the hand: 0 to the target, 90 upright. */
export const leanWords = (clockDeg: number): (typeof leans)[number] => leans[eighth(clockDeg)] ?? "weaker";

/** Where a logo or a rib is to be seen, by its place on the clock of the hand. */
export const facingWords = (clockDeg: number): (typeof faces)[number] => faces[eighth(clockDeg)] ?? "up";
