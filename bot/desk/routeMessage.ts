import type { MessageReading } from "../boundary/reading.ts";
import type { Values } from "../chat/types.ts";

/** The command a message stands for, or null when it is not for the bot. */
export function routeMessage(reading: MessageReading, text: string): { readonly command: string; readonly values: Values } | null {
  switch (reading.kind) {
    case "silence":
      return null;
    case "order":
    case "problems":
    case "hint":
      return { command: "order new", values: { text } };
    case "revise":
      return { command: "order revise", values: { order: String(reading.number), text } };
    case "hold":
    case "resume":
    case "scratch":
      return {
        command: `order ${reading.kind}`,
        values: { order: String(reading.number), ...(reading.reason === null ? {} : { reason: reading.reason }) },
      };
    case "pause":
      return { command: "step pause", values: { order: String(reading.number) } };
    case "expect":
      return { command: "order expect", values: { order: String(reading.number), time: reading.reason ?? "" } };
    case "where":
      return { command: "where", values: { what: String(reading.number) } };
    case "measured":
      return { command: "measured", values: { order: String(reading.number), text } };
    case "question":
      return routeQuestion(reading.question, text);
  }
}

function routeQuestion(
  question: Extract<MessageReading, { kind: "question" }>["question"],
  text: string,
): { readonly command: string; readonly values: Values } | null {
  switch (question.ask) {
    case "where":
      return { command: "where", values: { player: `id:${question.player}`, ...(question.club === null ? {} : { club: question.club }) } };
    case "gaming":
      return { command: "spec", values: { player: `id:${question.player}`, ...(question.club === null ? {} : { club: question.club }) } };
    case "owed":
      return { command: "owed", values: {} };
    case "short":
      return { command: "fill", values: { view: "short" } };
    case "next":
      return { command: "bench", values: {} };
    case "calc":
      return { command: "calc", values: { view: question.view, text } };
    case "match":
      return {
        command: "match",
        values: {
          ...(question.player === null ? {} : { player: `id:${question.player}` }),
          ...(question.club === null ? {} : { club: question.club }),
          text,
        },
      };
    case "find":
      return { command: "stock", values: { view: "find", text: question.text } };
    case "replenish":
      return { command: "stock", values: { view: "replenish" } };
    case "ready":
      return { command: "ready", values: { text: question.text } };
  }
}
