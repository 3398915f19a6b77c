import { clubFields } from "./clubFields.ts";

export const swingFields = {
  ...clubFields,
  to: { kind: "number", measure: "swing", min: -30, max: 40, bare: true, also: ["swing weight", "swingweight"] },
  points: { kind: "number", measure: "points", min: -30, max: 30, bare: true, also: ["swing"] },
} as const;

const asked = /\b(?:how (?:much|many)|what) (?:more |extra )?(?:lead|weight|grams?|g)(?: of lead)?\b|\b(?:lead|weight|grams)(?= for\b)/gi;
const swingTo = /\bswing (?:to )?(?=[a-g] ?\d)/gi;

/** The words of a question taken out, `swing d4` as `to d4`: the rest are values. */
export const swingText = (text: string): string => text.replace(asked, " ").replace(swingTo, "to ");
