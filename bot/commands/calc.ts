import { z } from "zod";
import { nearestWord } from "../boundary/calc/fieldNames.ts";
import { foldText } from "../boundary/foldText.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { calcViews } from "../flows/calc/calcViews.ts";
import type { CalcView } from "../flows/calc/defineCalcView.ts";
import { calcHelpReply, calcListReply } from "../replies/calc/calcHelp.ts";

const LONGEST_TEXT = 2000;
const views: readonly CalcView[] = Object.values(calcViews);

/** `head mass` and `swingweight` begin like a view, `swnig` is misspelt. */
function nearestView(name: string): string | null {
  const names = views.map((view) => view.name);
  return names.find((known) => name.length > 2 && (known.startsWith(name) || name.startsWith(known))) ?? nearestWord(name, names);
}

export const calc = defineCommand({
  name: "calc",
  summary: "The sums of the trade: swing weight, head mass and more; alone it lists them",
  options: [
    { name: "view", summary: `One of: ${views.map(({ name }) => name).join(", ")}`, required: false, oneOf: views.map(({ name }) => name) },
    { name: "text", summary: "Values with their names, up to 2,000 characters; left out, the view says what it takes", required: false },
  ],
  roles: [],
  audience: "asker",
  input: z.object({ view: z.string().max(100).optional(), text: z.string().max(LONGEST_TEXT).optional() }),
  run: async ({ view: written = "", text = "" }, context) => {
    const name = foldText(written.trim());
    const view = views.find((known) => known.name === name);
    if (view !== undefined) return text.trim() === "" ? calcHelpReply(view) : view.answer(text, context);
    return calcListReply(views, name === "" ? null : { name, near: nearestView(name) });
  },
});
