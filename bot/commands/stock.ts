import { z } from "zod";
import { foldText } from "../boundary/foldText.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { countView } from "../flows/stock/countView.ts";
import { findView } from "../flows/stock/findView.ts";
import { receiveView } from "../flows/stock/receiveView.ts";
import { refill, replenishView } from "../flows/stock/replenishView.ts";
import type { StockView } from "../flows/stock/stockView.ts";
import { stockHelpReply, stockViewReply } from "../replies/stock/stockHelp.ts";

const LONGEST_TEXT = 100_000;
const views: readonly StockView[] = [receiveView, countView, findView, replenishView];

export const stock = defineCommand({
  name: "stock",
  summary: "Parts and heads: receive, count, find, replenish; alone it lists them",
  options: [
    { name: "view", summary: `One of: ${views.map(({ name }) => name).join(", ")}`, required: false, oneOf: views.map(({ name }) => name) },
    { name: "text", summary: "Lines, a table or a question, up to 100,000 characters; left out, the view says what it takes", required: false },
    { name: "file", summary: "A table as a CSV file, or lines as a text file, in place of the text", required: false, takes: "file" },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({
    view: z.string().max(100).optional(),
    text: z.string().max(LONGEST_TEXT).optional(),
    file: z.string().max(LONGEST_TEXT).optional(),
    /** A bin picked on the list of what is owed. */
    replenish: z.string().max(20).optional(),
    argument: z
      .string()
      .regex(/^\d{1,12}:\d{1,12}$/)
      .optional(),
  }),
  run: async ({ view: written = "", file = "", text = file, replenish, argument }, context) => {
    if (replenish !== undefined && argument !== undefined) return refill(argument, context);
    const name = foldText(written.trim());
    const view = views.find((known) => known.name === name);
    if (view === undefined) return stockHelpReply(views, name === "" ? null : name);
    return text.trim() === "" && view !== replenishView ? stockViewReply(view) : view.answer(text, context);
  },
});
