import type { ClubName } from "../../core/kinds.ts";
import { type Message, withoutGo } from "./message.ts";
import { type Notepad, newNotepad } from "./notepad.ts";
import type { MessageReading, ReadingContext } from "./reading.ts";
import { readWords } from "./readWords.ts";
import { settle } from "./settle.ts";

/** Reads a message without a kind: a draft when it names a player, a club and a clause; else a question, a hint or silence. */
export function readKindless(message: Message, context: ReadingContext): MessageReading {
  const { words, goFrom } = withoutGo(message.words);
  const pad = newNotepad(message.text, words, context, { mode: "order", kind: null, kindAt: null });
  readWords(pad, 0);
  const clauses =
    pad.wishes.size +
    (pad.like === null ? 0 : 1) +
    pad.problems.filter((problem) => problem.code !== "which-player" && problem.code !== "which-club").length;
  const written = clauses + (pad.by === null ? 0 : 1) + (pad.count === 1 ? 0 : 1) + pad.out.length;
  const startsUnread = pad.unread[0]?.at === 0 || pad.remarks[0] === 0;
  if (pad.player === null || startsUnread || message.asks) return { kind: "silence" };
  const guessedPlayer = pad.mendings.some((mending) => mending.read === pad.player?.name && pad.unread.length > 0);
  if (guessedPlayer) return { kind: "silence" };
  const club = pad.sets.length > 0 ? undefined : pad.clubs[0];
  if (club === undefined && !pad.clubAsked) {
    const clear = clauses + pad.out.length > 0 && pad.unread.length === 0;
    return clear ? settle(pad, "build", goFrom) : { kind: "silence" };
  }
  const tooMuchUnread = pad.unread.length > clauses;
  if (written === 0 || tooMuchUnread) return club === undefined ? { kind: "silence" } : hint(pad, club);
  return settle(pad, "build", goFrom);
}

function hint(pad: Notepad, club: ClubName): MessageReading {
  return pad.player === null ? { kind: "silence" } : { kind: "hint", player: pad.player.id, club };
}
