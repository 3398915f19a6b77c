/** Colours told apart by people who see no red and green as well; waits and marks differ in shape besides. */
export const colours = {
  ink: "#1d2733",
  faint: "#cfd6dd",
  work: "#2f6f9f",
  underWay: "#123f63",
  wait: "#e0b04a",
  waitStripe: "#7a5a12",
  closed: "#e9ecef",
  late: "#b3261e",
  wall: "#1d2733",
} as const;

export const FONT = "DejaVu Sans Condensed";
/** Height of a row, and size of its text. */
export const ROW = 52;
export const TEXT = 25;
