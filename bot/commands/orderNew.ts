import { z } from "zod";
import { orderKinds } from "../../core/kinds.ts";
import { orderTextFromOptions } from "../boundary/orderTextFromOptions.ts";
import { defineCommand, type Option } from "../chat/defineCommand.ts";
import { orderFields } from "../flows/orderFields.ts";
import { orderFromText } from "../flows/orderFromText.ts";

const takenBy: Partial<Readonly<Record<(typeof orderFields)[number], Option["takes"]>>> = {
  player: "player",
  club: "club",
  head: "head",
  shaft: "shaft",
  grip: "grip",
};

export const orderNew = defineCommand({
  name: "order new",
  summary: "Order work on a player's club",
  options: [
    { name: "text", summary: "The whole order, as in a message", required: false },
    ...orderFields.map((name) => ({
      name,
      summary: `The order's ${name}`,
      required: false,
      takes: takenBy[name],
      oneOf: name === "kind" ? orderKinds : undefined,
    })),
  ],
  roles: ["rep", "lead"],
  audience: "channel",
  input: z.object({
    text: z.string().max(4000).optional(),
    ...Object.fromEntries(orderFields.map((name) => [name, z.string().max(200).optional()])),
  }),
  run: async (input, context) => {
    const values = Object.fromEntries(Object.entries(input).flatMap(([name, value]) => (typeof value === "string" ? [[name, value]] : [])));
    const text = values.text ?? orderTextFromOptions(values);
    return orderFromText(context, text, context.key.split(":").slice(0, 2).join(":"));
  },
});
