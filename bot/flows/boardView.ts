import type { Id } from "../../core/kinds.ts";
import { benchStates, ordersIn } from "../../db/repositories/orders.ts";
import type { Context } from "../chat/context.ts";
import type { Reply } from "../chat/types.ts";
import { orderFacts } from "../operations/orderFacts.ts";
import { readyBoard } from "../operations/readyBoard.ts";
import { boardCard } from "../replies/boardCard.ts";
import { reply } from "../replies/card.ts";
import { readyBoardPrintOf } from "../replies/readyBoardPrintOf.ts";
import { readyBoardRows } from "../replies/readyBoardText.ts";

/** The board of a truck's bench, for whoever asks. */
export function boardView(context: Context, truck: Id<"truck">): Reply {
  const rows = context.read((reader) => ordersIn(reader, truck, [...benchStates, "ready"]).map((order) => orderFacts(reader, order, context.now)));
  const board = readyBoardPrintOf(context.read((reader) => readyBoard(reader, truck, context.now)));
  const card = boardCard(rows, context.now);
  return reply({
    ...card,
    fields: [...card.fields, ...readyBoardRows(board)],
    files: [{ name: "ready-board.png", draw: "readyBoard", board }],
  });
}
