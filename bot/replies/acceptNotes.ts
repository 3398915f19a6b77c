import type { Reply } from "../chat/types.ts";
import { note } from "./card.ts";

/** A club off what was written, taken as it is by the player. */
export const acceptedNote = (number: number): Reply => note("order.accepted", `${number} accepted as measured: ready to hand over`, "good");

/** The reason is the player's own; it is kept. */
export const acceptForm = (order: { readonly id: number; readonly number: number; readonly version: number }): Reply => ({
  kind: "form",
  form: {
    title: `${order.number}: the player takes it as it is`,
    action: { command: "order accept", subject: `order:${order.id}`, version: order.version },
    parts: [{ name: "reason", label: "Why, in the player's words", items: [], required: true, value: "" }],
  },
});

export const notAcceptableNote = (number: number, why: "nothing-off" | "not-measured" | "lead-only"): Reply => {
  const words = {
    "nothing-off": "nothing on it is off: there is nothing to accept",
    "not-measured": "it is not measured in full yet",
    "lead-only": "conformity is accepted by the lead only",
  };
  return note("refusal", `${number}: ${words[why]}`, "refusal", "Nothing was changed.");
};
