import type { BuildRequest, Clauses } from "../../core/buildSheet/buildRequest.ts";
import type { OrderKind } from "../../core/kinds.ts";
import { askMissing } from "./askMissing.ts";
import { askUnread } from "./askUnread.ts";
import { type Notepad, typed, wordAt } from "./notepad.ts";
import type { MessageReading } from "./reading.ts";
import { startsRemark } from "./vocabulary.ts";

/** Problems and mendings shown at most: a message has no more clauses than that. */
const MOST_SHOWN = 25;

/** The clauses noted, as the contract has them. */
export function clausesOf(pad: Notepad): Clauses {
  return Object.fromEntries([...pad.wishes].map(([key, { wish }]) => [key, wish])) as Clauses;
}

export function problemsOf(pad: Pick<Notepad, "problems" | "mendings">, orderKind: OrderKind | null): MessageReading {
  const problems = [...pad.problems].sort((one, other) => one.place.from - other.place.from || one.place.to - other.place.to);
  return { kind: "problems", problems: problems.slice(0, MOST_SHOWN), mendings: mendingsOf(pad), orderKind };
}

export function mendingsOf(pad: Pick<Notepad, "mendings">): Notepad["mendings"] {
  return [...pad.mendings].sort((one, other) => one.place.from - other.place.from).slice(0, MOST_SHOWN);
}

function requestOf(pad: Notepad, kind: OrderKind, player: BuildRequest["player"]): BuildRequest {
  const remark = remarkOf(pad);
  const note = [pad.note, remark].filter((words) => words !== null).join("; ") || null;
  return {
    kind,
    player,
    clubs: pad.clubs,
    out: pad.out,
    count: pad.count,
    like: pad.like ?? (kind === "swap" ? { from: "gamer" } : null),
    clauses: clausesOf(pad),
    by: pad.by,
    to: pad.to,
    purpose: pad.purpose,
    urgent: pad.urgent || kind === "broke",
    broughtBy: pad.broughtBy,
    note,
  };
}

/** What was said in passing (`its swinging light`) is kept as the note; a lone `its` says nothing. */
function remarkOf(pad: Notepad): string | null {
  const runs: { readonly from: number; readonly next: number }[] = [];
  for (const at of pad.remarks) {
    const last = runs.at(-1);
    if (last !== undefined && last.next === at) runs[runs.length - 1] = { ...last, next: at + 1 };
    else runs.push({ from: at, next: at + 1 });
  }
  const said = runs.filter(({ from, next }) => next - from > 1 || !startsRemark(wordAt(pad, from)));
  return said.length === 0 ? null : said.map(({ from, next }) => typed(pad, from, next)).join("; ");
}

export function settle(pad: Notepad, kind: OrderKind, goFrom: number | null): MessageReading {
  askMissing(pad);
  askUnread(pad);
  if (pad.problems.length > 0 || pad.player === null) return problemsOf(pad, kind);
  const go = goFrom !== null && goFrom >= pad.restEnd;
  return { kind: "order", request: requestOf(pad, kind, pad.player.id), go, mendings: mendingsOf(pad) };
}
