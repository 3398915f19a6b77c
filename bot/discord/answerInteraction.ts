import {
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  DiscordAPIError,
  type Interaction,
  MessageFlags,
  RESTJSONErrorCodes,
} from "discord.js";
import type { Incoming, Reply } from "../chat/types.ts";
import type { Answers, Asking } from "../desk/answers.ts";
import { leavingCard } from "../replies/lateAnswerCard.ts";
import { attachFiles } from "./attachFiles.ts";
import { drawCard } from "./drawCard.ts";
import { drawForm, formDoor } from "./drawForm.ts";
import type { CalledOf } from "./drawLine.ts";
import { type Answerable, type Arriving, isAnswerable } from "./interactionArrival.ts";

/** The platform waits three seconds for a first answer. */
const PATIENCE_MS = 2000;

interface AnswerParts {
  readonly receive: (incoming: Incoming) => Promise<Reply | null>;
  readonly answers: Pick<Answers, "asked" | "reached" | "missed">;
  readonly calledOf: CalledOf;
  /** The names of the commands that may answer by a form. */
  readonly opensForm: ReadonlySet<string>;
  readonly log: (error: unknown, doing: string) => void;
}

/** What comes while the bot leaves: nothing of it is done. */
export async function turnAway(interaction: Interaction): Promise<void> {
  if (interaction.isAutocomplete()) {
    await interaction.respond([]);
  } else if (isAnswerable(interaction)) {
    const { embeds } = drawCard(leavingCard, "", () => null);
    await interaction.reply({ embeds, flags: MessageFlags.Ephemeral });
  }
}

/**
 * Acknowledges first, then shows the answer to the asker alone: what the channel should see leaves by the outbox. An
 * answer that the platform takes no more leaves as a post too.
 */
export async function answerInteraction(interaction: Answerable, arriving: Arriving, parts: AnswerParts): Promise<void> {
  const { asking } = arriving;
  const isForm = mayOpenForm(interaction) && parts.opensForm.has(asking.command);
  const putOff = isForm ? null : putOffAnswer(interaction, parts);
  keepAsked(asking, parts);
  await putOff;
  const receiving = arriving.incoming().then(parts.receive);
  const hasReached = isForm ? await answerWithForm(interaction, receiving, parts) : await show(interaction, await receiving, parts);
  if (hasReached) {
    parts.answers.reached(asking.key);
  } else {
    parts.answers.missed(asking, await receiving);
  }
}

/** It is answered all the same when it cannot be kept, on a full disk for instance: the desk tells what went wrong. */
function keepAsked(asking: Asking, { answers, log }: AnswerParts): void {
  try {
    answers.asked(asking);
  } catch (error) {
    log(error, "keeping what was asked");
  }
}

const mayOpenForm = (interaction: Answerable): interaction is ButtonInteraction | ChatInputCommandInteraction =>
  interaction.isButton() || interaction.isChatInputCommand();

/** Refused or lost, the answer is tried all the same: the platform may have taken the acknowledgement. */
async function putOffAnswer(interaction: Answerable, { log }: AnswerParts): Promise<void> {
  try {
    await interaction.deferReply({ flags: MessageFlags.Ephemeral });
  } catch (error) {
    if (!isAcknowledged(error)) {
      log(error, "acknowledging");
    }
  }
}

/** A try that was lost on its way back has been taken before. */
const isAcknowledged = (error: unknown): boolean =>
  error instanceof DiscordAPIError && error.code === RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged;

async function answerWithForm(
  interaction: ButtonInteraction | ChatInputCommandInteraction,
  receiving: Promise<Reply | null>,
  parts: AnswerParts,
): Promise<boolean> {
  const first = await Promise.race([receiving, patience()]);
  const modal = first !== "late" && first?.kind === "form" ? drawForm(first.form) : null;
  if (modal === null) {
    await putOffAnswer(interaction, parts);
    return show(interaction, await receiving, parts);
  }
  try {
    await interaction.showModal(modal);
    return true;
  } catch (error) {
    if (!isAcknowledged(error)) {
      parts.log(error, "opening a form");
    }
    return isAcknowledged(error);
  }
}

const patience = (): Promise<"late"> => new Promise((resolve) => setTimeout(() => resolve("late"), PATIENCE_MS).unref());

/** Puts the answer in place of "please wait"; false when the platform does not take it. */
async function show(interaction: Answerable, reply: Reply | null, { calledOf, log }: AnswerParts): Promise<boolean> {
  try {
    await (reply === null
      ? interaction.webhook.deleteMessage("@original")
      : interaction.webhook.editMessage("@original", await answerOf(reply, calledOf)));
    return true;
  } catch (error) {
    log(error, "answering");
    return false;
  }
}

/** An answer already put off cannot open a form: it offers the press that does. */
async function answerOf(reply: Reply, calledOf: CalledOf) {
  const card = reply.kind === "card" ? reply.card : formDoor(reply.form);
  const { embeds, components } = drawCard(card, "", calledOf);
  return { embeds, components, ...(await attachFiles(card)), allowedMentions: { parse: [] } };
}
