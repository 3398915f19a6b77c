import { attachedText } from "./attachedText.ts";
import { readCommandLine } from "./commandLine.ts";
import { deliver, deliverEdit, deliverMessage, redeliver } from "./deliver.ts";
import { fillPart, sendForm } from "./formLine.ts";
import { passTimeBy, passTimeToWritten } from "./passTime.ts";
import { chooseItem, pressButton } from "./pressLine.ts";
import type { RehearsalLine } from "./rehearsalLine.ts";
import type { Misuse, Session } from "./session.ts";

/** Does what one line asks. */
export async function playLine(session: Session, line: RehearsalLine): Promise<Misuse> {
  switch (line.kind) {
    case "nothing":
    case "quit":
      return null;
    case "message":
      return deliverMessage(session, line.text);
    case "edit":
      return deliverEdit(session, line.text);
    case "attach":
      return playAttach(session, line.file);
    case "command":
      return playCommand(session, line.text);
    case "person":
      return become(session, line.name);
    case "channel":
      return enter(session, line.name);
    case "forward":
      return passTimeBy(session, line.ms);
    case "moment":
      return passTimeToWritten(session, line.written);
    case "press":
      return pressButton(session, line.number, line.on);
    case "choose":
      return chooseItem(session, line.number, line.on);
    case "answer":
      return fillPart(session, line.number, line.text);
    case "send":
      return sendForm(session);
    case "again":
      return session.last === null ? "nothing was delivered yet" : redeliver(session, session.last);
  }
}

function become(session: Session, name: string): Misuse {
  if (!session.world.people.has(name)) return `no person @${name}`;
  session.person = name;
  return null;
}

function enter(session: Session, name: string): Misuse {
  if (!session.world.channels.includes(name))
    return `no channel #${name}; there are ${session.world.channels.map((channel) => `#${channel}`).join(" ")}`;
  session.channel = name;
  return null;
}

async function playCommand(session: Session, text: string): Promise<Misuse> {
  const read = readCommandLine(text, session.world.commandOptions);
  if (read.kind === "misused") return read.reason;
  const { command } = read;
  const values = new Map(Object.entries(read.values));
  for (const { name, takes } of session.world.commandOptions(command) ?? []) {
    const path = values.get(name);
    if (takes !== "file" || path === undefined) continue;
    const file = await attachedText(path);
    if (file.kind === "unreadable") return file.reason;
    values.set(name, file.text);
  }
  return deliver(session, `invoke:${session.world.newKey()}`, session.channel, { kind: "invoke", command, values: Object.fromEntries(values) });
}

async function playAttach(session: Session, file: string): Promise<Misuse> {
  const read = await attachedText(file);
  return read.kind === "text" ? deliverMessage(session, read.text) : read.reason;
}
