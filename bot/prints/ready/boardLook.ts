/** Colours told apart by people who see no red and green as well; waits and marks differ in shape besides. */
export const colours = {
  ink: "#1d2733",
  paper: "#ffffff",
  faint: "#cfd6dd",
  work: "#2f6f9f",
  underWay: "#123f63",
  wait: "#f0cf86",
  waitStripe: "#7a5a12",
  closed: "#e3e7eb",
  late: "#b3261e",
} as const;

export const FONT = "DejaVu Sans Condensed";

/** In pixels of a picture that a phone shows a third as wide. */
export const look = {
  width: 1080,
  margin: 24,
  /** Room for the names of technicians and stations. */
  names: 200,
  right: 44,
  top: 168,
  row: 54,
  bar: 42,
  /** An order's words above, its marks below. */
  lane: 78,
  /** Between the two charts: the clock of the upper one. */
  between: 84,
  below: 64,
  text: 28,
  smallText: 22,
} as const;

/** How wide a text is, near enough to choose what finds room. */
export const roughWidth = (text: string, size: number): number => text.length * size * 0.52;

/** How texts look unless said otherwise. */
export const plainText = { fontFamily: FONT, fontSize: look.text, fontWeight: "normal", color: colours.ink } as const;
