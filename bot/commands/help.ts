import { z } from "zod";
import { defineCommand } from "../chat/defineCommand.ts";
import { note } from "../replies/card.ts";

export const help = defineCommand({
  name: "help",
  summary: "What people can do here",
  options: [{ name: "about", summary: "A topic", required: false }],
  roles: [],
  audience: "asker",
  input: z.object({ about: z.string().max(100).optional() }),
  run: async ({ about }) =>
    about === undefined
      ? note(
          "help",
          "Type it as you would say it",
          "plain",
          "Order: build oxtoby driver like gamer, loft 9.25, by 14:30 go",
          "On an order: 57 make it d4 · hold 57 · scratch 57 · where 57",
          "Gauge: measured 57 loft 9.2 face 0.4 open swing d3 length 45 1/4",
          "Ask: what is quarrie gaming · where is toll's driver · what do we owe",
          "When: /ready oxtoby driver by 14:30 · a driver for bram now, by 2:30?",
          "Stock: /stock lists what it does · under 9 true, left hand?",
          "Sums: /calc lists them · two more points, how much weight?",
        )
      : note("help", "I understand that question and cannot answer it yet", "attention", `It is about ${about}. /help lists what I can do.`),
});
