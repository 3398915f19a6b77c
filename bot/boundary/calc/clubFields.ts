import { partFields } from "./partFields.ts";

/** A club as people type it: its parts, and the two lengths that matter when the shaft's own inertia or a new length is asked. */
export const clubFields = {
  ...partFields,
  cut: { kind: "number", measure: "length", min: 300, max: 1500, also: ["bare cut", "shaft length"] },
  cap: { kind: "number", measure: "length", min: 0, max: 12.7, also: ["grip cap"] },
} as const;
