import { type ButtonInteraction, type ChatInputCommandInteraction, MessageFlags } from "discord.js";
import type { Incoming, Reply } from "../chat/types.ts";
import type { Answerable } from "./arrivalOf.ts";
import { attachFiles } from "./attachFiles.ts";
import { drawCard } from "./drawCard.ts";
import { drawForm, formDoor } from "./drawForm.ts";
import type { CalledOf } from "./drawLine.ts";

/** A form must be the first answer, so these are not put off. */
const answersWithForm: ReadonlySet<string> = new Set(["order change", "order form"]);
/** The platform waits three seconds for a first answer. */
const PATIENCE_MS = 2000;

type Receive = () => Promise<Reply | null>;

/** Acknowledges first, then shows the answer to the asker alone. */
export async function answerInteraction(interaction: Answerable, incoming: Incoming, receive: Receive, calledOf: CalledOf): Promise<void> {
  if (mayOpenForm(interaction) && answersWithForm.has(commandOf(incoming))) {
    await answerWithForm(interaction, receive, calledOf);
    return;
  }
  await interaction.deferReply({ flags: MessageFlags.Ephemeral });
  await finish(interaction, await receive(), calledOf);
}

const commandOf = (incoming: Incoming): string =>
  incoming.kind === "message" ? "" : incoming.kind === "invoke" ? incoming.command : incoming.action.command;

const mayOpenForm = (interaction: Answerable): interaction is ButtonInteraction | ChatInputCommandInteraction =>
  interaction.isButton() || interaction.isChatInputCommand();

async function answerWithForm(interaction: ButtonInteraction | ChatInputCommandInteraction, receive: Receive, calledOf: CalledOf): Promise<void> {
  const receiving = receive();
  const first = await Promise.race([receiving, patience()]);
  const modal = first !== "late" && first?.kind === "form" ? drawForm(first.form) : null;
  if (modal !== null) {
    await interaction.showModal(modal);
    return;
  }
  await interaction.deferReply({ flags: MessageFlags.Ephemeral });
  await finish(interaction, await receiving, calledOf);
}

const patience = (): Promise<"late"> => new Promise((resolve) => setTimeout(() => resolve("late"), PATIENCE_MS).unref());

async function finish(interaction: Answerable, reply: Reply | null, calledOf: CalledOf): Promise<void> {
  if (reply === null) {
    await interaction.deleteReply();
    return;
  }
  await interaction.editReply(await answerOf(reply, calledOf));
}

/** An answer already put off cannot open a form: it offers the press that does. */
async function answerOf(reply: Reply, calledOf: CalledOf) {
  const card = reply.kind === "card" ? reply.card : formDoor(reply.form);
  const { embeds, components } = drawCard(card, "", calledOf);
  return { embeds, components, ...(await attachFiles(card)), allowedMentions: { parse: [] } };
}
