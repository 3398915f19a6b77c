import type { Reply } from "../../bot/chat/types.ts";
import type { MemoryBot } from "./memoryBot.ts";
import { dessa, maren } from "./people.ts";
import { orderPost, sheetPost } from "./readCard.ts";

/** The order of the demo's main job; it names nothing twice and is the sixth of its truck's week. */
export const DRIVER_ORDER = "build oxtoby driver like gamer\nloft 9.25, face 0.5 open, length 45 1/4\nswing d3, by 14:30";
export const DRIVER_NUMBER = 6;

const stages = ["draft", "confirmed", "building", "gluedOn", "finalCheck", "ready", "outWithPlayer", "closed"] as const;
export type Stage = (typeof stages)[number];

/** What the gauge and the scale say: as written; two points heavy; a degree and more weak. */
export const AS_WRITTEN = `measured ${DRIVER_NUMBER} loft 9.2 face 0.4 open swing d3 length 45 1/4`;
export const HEAVY = `measured ${DRIVER_NUMBER} loft 9.2 face 0.4 open swing d5 length 45 1/4`;
export const WEAK = `measured ${DRIVER_NUMBER} loft 10.6 face 0.4 open swing d3 length 45 1/4`;

const steps: Readonly<Record<Stage, (bot: MemoryBot) => Promise<unknown>>> = {
  draft: (bot) => bot.say(maren, DRIVER_ORDER),
  confirmed: (bot) => bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "Go"),
  building: (bot) => bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Start"),
  gluedOn: (bot) => bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Glue on"),
  finalCheck: (bot) => bot.press(dessa, sheetPost(bot, DRIVER_NUMBER).card, "Done"),
  ready: (bot) => bot.say(dessa, AS_WRITTEN),
  outWithPlayer: (bot) => handToPlayer(bot, DRIVER_NUMBER),
  closed: (bot) => bot.press(maren, orderPost(bot, DRIVER_NUMBER).card, "In the bag"),
};

/** Hands a ready club to the player; where the list for play is asked first, its head is on it. */
export async function handToPlayer(bot: MemoryBot, number: number): Promise<Reply | null> {
  const reply = await bot.press(maren, orderPost(bot, number).card, "To player");
  return reply?.kind === "card" && reply.card.kind === "ask.list" ? bot.press(maren, reply.card, "On it: to player") : reply;
}

/** Takes the driver's order through its life up to a stage, by what people send and press. */
export async function bringTo(bot: MemoryBot, stage: Stage): Promise<void> {
  for (const step of stages.slice(0, stages.indexOf(stage) + 1)) {
    await steps[step](bot);
    await bot.settle();
  }
}
