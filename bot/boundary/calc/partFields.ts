import type { PartField } from "./fields.ts";

const part = (usualG: number, ...also: readonly string[]): PartField => ({ kind: "part", usualG, also });
/** Two of it are a slip of the thumb. */
const onePart = (usualG: number, ...also: readonly string[]): PartField => ({ ...part(usualG, ...also), once: true });

/** No club is so short that its head is nearer: 18 in are the least the rules allow. */
const NEAREST_HEAD_MM = 450;

/** The parts of a club as masses at places; any other name before a mass at a place is a part too. */
export const partFields = {
  head: { ...onePart(220, "hd", "head weight"), nearestMm: NEAREST_HEAD_MM },
  shaft: onePart(80, "sh"),
  grip: onePart(50, "grp"),
  sleeve: onePart(6.5, "sleeve and screw"),
  ferrule: part(2.5, "ferrule and glue", "ferrule and epoxy"),
  epoxy: part(2, "glue", "adhesive", "epoxy and ferrule", "glue and ferrule"),
  tape: part(3),
  screw: part(4),
  weight: part(4, "tip weight", "butt weight"),
  lead: part(2, "lead tape"),
} as const;
