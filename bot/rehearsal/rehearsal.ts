import { createInterface, type Interface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import { clockText } from "./clockText.ts";
import { plainText } from "./plainText.ts";
import { playLine } from "./playLine.ts";
import { readRehearsalLine } from "./rehearsalLine.ts";
import type { RehearsalWorld } from "./rehearsalWorld.ts";
import type { Screen } from "./screen.ts";
import type { Misuse, Session } from "./session.ts";

interface RehearsalParts {
  readonly input: Readable;
  /** For prompts and echoes; the screen has its own. */
  readonly output: Writable;
  readonly errors: Writable;
  /** A person sits there: prompt them, and go on after a misuse. */
  readonly terminal: boolean;
  /** Repeat each line played, so that a script's output as text reads as a conversation. */
  readonly echo: boolean;
  readonly as: string;
  readonly channel: string;
}

/**
 * Plays lines until `quit` or the end of input.
 *
 * @returns 0, or 2 when a line could not be played and no person was there to be told
 */
export async function runRehearsal(world: RehearsalWorld, screen: Screen, parts: RehearsalParts): Promise<0 | 2> {
  const session: Session = { world, screen, person: parts.as, channel: parts.channel, last: null, messages: new Map(), forms: new Map() };
  const unknown = world.people.has(parts.as)
    ? world.channels.includes(parts.channel)
      ? null
      : `no channel #${parts.channel}`
    : `no person @${parts.as}`;
  if (unknown !== null) {
    parts.errors.write(`${plainText(unknown)}\n`);
    return 2;
  }
  await world.settle();
  const { input, output, terminal } = parts;
  const lines = createInterface(terminal ? { input, output, terminal } : { input, crlfDelay: Number.POSITIVE_INFINITY });
  try {
    return await playAll(session, parts, lines);
  } finally {
    lines.close();
  }
}

async function playAll(session: Session, parts: RehearsalParts, lines: Interface): Promise<0 | 2> {
  const begun: string[] = [];
  let lineNumber = 0;
  const finish = async (): Promise<"on" | "quit" | "misused"> => {
    const text = begun.splice(0).join("\n");
    const line = readRehearsalLine(text);
    if (parts.echo) echo(parts.output, line.kind === "nothing" ? "" : `${session.person}> `, text);
    if (line.kind === "quit") return "quit";
    return isMisused(parts, lineNumber, await playAndSettle(session, line)) ? "misused" : "on";
  };
  prompt(session, parts, lines, false);
  for await (const written of lines) {
    lineNumber += 1;
    const line = lineNumber === 1 ? written.replace(/^\ufeff/, "") : written;
    const continues = line.endsWith("\\");
    begun.push(continues ? line.slice(0, -1) : line);
    const after = continues ? "on" : await finish();
    if (after !== "on") return after === "quit" ? 0 : 2;
    prompt(session, parts, lines, continues);
  }
  return begun.length > 0 && (await finish()) === "misused" ? 2 : 0;
}

async function playAndSettle(session: Session, line: ReturnType<typeof readRehearsalLine>): Promise<Misuse> {
  const misuse = await playLine(session, line);
  if (misuse === null && line.kind !== "nothing") await session.world.settle();
  return misuse;
}

/** Says what was wrong; a person may go on, a script may not. */
function isMisused({ errors, terminal }: RehearsalParts, lineNumber: number, misuse: Misuse): boolean {
  if (misuse === null) return false;
  errors.write(`${terminal ? "" : `line ${lineNumber}: `}${plainText(misuse)}\n`);
  return !terminal;
}

function prompt({ world, person, channel }: Session, { terminal }: RehearsalParts, lines: Interface, continues: boolean): void {
  if (!terminal) return;
  const now = world.clock.now();
  lines.setPrompt(continues ? "... " : `${person} #${channel} ${clockText(now, world.zoneOf(channel), now)}> `);
  lines.prompt();
}

function echo(output: Writable, who: string, text: string): void {
  for (const line of text.split("\n")) output.write(`${who}${plainText(line)}\n`);
}
