import { PassThrough, Readable } from "node:stream";
import type { Card, Incoming, Reply } from "../../../bot/chat/types.ts";
import type { CommandOption } from "../../../bot/rehearsal/commandLine.ts";
import type { KeepFiles } from "../../../bot/rehearsal/keepFiles.ts";
import { runRehearsal } from "../../../bot/rehearsal/rehearsal.ts";
import type { PostName, RehearsalPost, RehearsalWorld } from "../../../bot/rehearsal/rehearsalWorld.ts";
import { openScreen, type Screen } from "../../../bot/rehearsal/screen.ts";
import { type Instant, instant } from "../../../core/kinds.ts";

/** 07:00 of a Monday in the zone of the channel `range`. */
export const START = instant(Date.parse("2027-05-03T11:00:00Z"));

export interface Surroundings {
  readonly reply?: (incoming: Incoming, screen: Screen) => Reply | null | Promise<Reply | null>;
  /** Moments at which something is due, with what is then posted in `range`. */
  readonly due?: readonly (readonly [Instant, Card])[];
  readonly earlier?: (name: PostName, channel: string) => RehearsalPost | null;
  readonly keepFiles?: KeepFiles;
  readonly terminal?: boolean;
  readonly json?: boolean;
  readonly echo?: boolean;
  readonly as?: string;
  readonly channel?: string;
}

export interface Played {
  readonly exit: 0 | 2;
  readonly received: readonly Incoming[];
  readonly output: string;
  readonly errors: string;
  readonly moved: readonly Instant[];
}

const options = new Map<string, readonly CommandOption[]>([
  ["spec", [{ name: "player" }, { name: "club" }]],
  ["stock", [{ name: "view" }, { name: "text" }, { name: "file", takes: "file" }]],
]);

/** Plays lines against a desk that answers as told, with an outbox of what is due. */
export async function playedScript(lines: readonly string[], around: Surroundings = {}): Promise<Played> {
  const [output, errors] = [new PassThrough(), new PassThrough()];
  const received: Incoming[] = [];
  const moved: Instant[] = [];
  const waiting = [...(around.due ?? [])];
  const clock = { now: () => moved.at(-1) ?? START, moveTo: (at: Instant) => void moved.push(at) };
  const zoneOf = (channel: string): string => (channel === "range" ? "America/New_York" : "UTC");
  const screen = openScreen({ output, json: around.json ?? false, zoneOf, now: clock.now, keepFiles: around.keepFiles ?? (async () => []) });
  let keys = 0;
  const world: RehearsalWorld = {
    desk: {
      receive: async (incoming) => {
        received.push(incoming);
        return (await around.reply?.(incoming, screen)) ?? null;
      },
      suggest: () => [],
    },
    people: new Map(["marta", "joss"].map((name) => [name, { platformId: `id-${name}`, roleIds: ["rep"], name, zone: "UTC" }])),
    channels: ["range", "workshop"],
    zoneOf,
    clock,
    nextDueAt: (limit) => waiting.map(([at]) => at).find((at) => at <= limit) ?? null,
    settle: async () => {
      while (waiting[0] !== undefined && waiting[0][0] <= clock.now()) {
        const [at, card] = waiting[0];
        waiting.shift();
        await screen.sender.send("range", card, { nonce: `n${at}`, ref: `ref${at}` });
      }
    },
    newKey: () => String(++keys),
    commandOptions: (command) => options.get(command) ?? null,
    findPost: (name, channel) => around.earlier?.(name, channel) ?? null,
  };
  const input = Readable.from([lines.join("\n")]);
  const { terminal = false, echo = false, as = "marta", channel = "range" } = around;
  const exit = await runRehearsal(world, screen, { input, output, errors, terminal, echo, as, channel });
  return { exit, received, moved, output: textOf(output), errors: textOf(errors) };
}

function textOf(stream: PassThrough): string {
  return (stream.read() as Buffer | null)?.toString("utf8") ?? "";
}
