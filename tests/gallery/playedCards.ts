import { PassThrough, Readable } from "node:stream";
import type { Card, Form } from "../../bot/chat/types.ts";
import { type KeepFiles, type KeptFile, keepFilesIn } from "../../bot/rehearsal/keepFiles.ts";
import { runRehearsal } from "../../bot/rehearsal/rehearsal.ts";
import { openScreen } from "../../bot/rehearsal/screen.ts";
import { rehearsalClock, rehearsalWorld } from "../../bot/rehearsalBot.ts";
import { type Instant, instant } from "../../core/kinds.ts";
import { demoWeek } from "../support/demoWeek.ts";

/** A card or form as somebody saw it, and when. */
export interface Shown {
  readonly content: Card | Form;
  readonly files: readonly KeptFile[];
  readonly channel: string;
  readonly to: string | null;
  readonly at: Instant;
  readonly zone: string;
}

interface JsonPost {
  readonly at: string;
  readonly channel: string;
  readonly to: string | null;
  readonly card?: Omit<Card, "files"> & { readonly files: readonly KeptFile[] };
  readonly form?: Form;
}

/** Plays a script in the real rehearsal on the demo week in memory. @returns all that was shown, in its order */
export async function playedCards(script: string, folder: string): Promise<readonly Shown[]> {
  const { db, close } = await demoWeek();
  const [output, errors] = [new PassThrough(), new PassThrough()];
  const bugs: unknown[] = [];
  try {
    const clock = rehearsalClock(db);
    const keepFiles: KeepFiles = keepFilesIn(() => folder);
    const screen = openScreen({ output, json: true, zoneOf: () => "UTC", now: clock.now, keepFiles });
    const world = rehearsalWorld(db, screen, (error) => bugs.push(error));
    const written: string[] = [];
    output.on("data", (chunk: Buffer) => written.push(chunk.toString("utf8")));
    const input = Readable.from([script]);
    const parts = { input, output: new PassThrough(), errors, terminal: false, echo: false, as: "maren", channel: "plover-orders" };
    const exit = await runRehearsal(world, screen, parts);
    if (exit !== 0 || bugs.length > 0) {
      throw new Error(`the script could not be played: ${errors.read() ?? ""}`, { cause: bugs[0] });
    }
    const lines = written.join("").trim().split("\n");
    return lines.map((line) => shownOf(JSON.parse(line) as JsonPost, world.zoneOf));
  } finally {
    close();
  }
}

function shownOf({ at, channel, to, card, form }: JsonPost, zoneOf: (channel: string) => string): Shown {
  const content = card === undefined ? form : { ...card, files: [] };
  if (content === undefined) {
    throw new Error("a line of the rehearsal shows neither a card nor a form");
  }
  return { content, files: card?.files ?? [], channel, to, at: instant(Date.parse(at)), zone: zoneOf(channel) };
}
