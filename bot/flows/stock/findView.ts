import { LONGEST_QUESTION, readFind } from "../../boundary/stock/readFind.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { findHeads } from "../../operations/findStockHeads.ts";
import { findParts } from "../../operations/findStockParts.ts";
import { reply } from "../../replies/card.ts";
import { foundHeadsCard } from "../../replies/stock/foundHeadsCard.ts";
import { foundPartsCard } from "../../replies/stock/foundPartsCard.ts";
import { longQuestionNote, nothingAskedReply } from "../../replies/stock/stockNotes.ts";
import { findExamples } from "../../replies/stock/unreadLines.ts";
import { knownStock } from "./knownStock.ts";
import type { StockView } from "./stockView.ts";

export const findView: StockView = { name: "find", summary: "finds heads by what they measure, parts by name", takes: findExamples, answer: find };

/** Asked where no truck is, all that lies anywhere lies elsewhere. */
function find(text: string, { actor: { truck }, read }: Context): Reply {
  if (text.length > LONGEST_QUESTION) return longQuestionNote(LONGEST_QUESTION);
  const known = read((reader) => knownStock(reader, truck));
  const reading = readFind(text, known);
  if (reading.kind === "nothing") return nothingAskedReply(reading.unread);
  if (reading.kind === "parts") {
    const found = read((reader) => findParts(reader, reading.question, { ...known, truckId: truck }));
    return reply(foundPartsCard(reading.question, found, reading.unread));
  }
  return reply(
    foundHeadsCard(
      reading.question,
      read((reader) => findHeads(reader, reading.question, truck)),
      reading.unread,
    ),
  );
}
