import { clubFields } from "./clubFields.ts";

export const swingFields = {
  ...clubFields,
  points: { kind: "number", measure: "points", min: -30, max: 30, bare: true, also: ["swing"] },
} as const;
