import type { Gateway } from "./gateway.ts";
import { type Interaction, type Interactions, SUBMIT } from "./interactions.ts";
import { channelRow, memberRow, userRow } from "./rows.ts";
import { messageRow, type Said, type Store } from "./store.ts";
import { idOf, type World } from "./world.ts";

type Row = Readonly<Record<string, unknown>>;
export type Values = Readonly<Record<string, string>>;

const COMMAND = 2;
const COMPONENT = 3;
const AUTOCOMPLETE = 4;
const BUTTON = 2;
const SELECT = 3;
const CHAT_INPUT = 1;
const ON_MESSAGE = 3;
const SUBCOMMAND = 1;
const STRING = 3;
const ATTACHMENT = 11;

/** What people do, by handle and channel name, as the platform passes it on. */
export interface Acts {
  readonly says: (who: string, channel: string, text: string, attachments?: readonly Row[]) => Said;
  readonly edits: (said: Said, text: string) => void;
  /** The same message delivered a second time. */
  readonly deliverAgain: (said: Said) => void;
  /** Says and edits, of which the edit is delivered first. */
  readonly saysOutOfOrder: (who: string, channel: string, text: string, edited: string) => Said;
  readonly presses: (who: string, said: Pick<Said, "id" | "channel" | "components">, label: string) => Interaction;
  /** A press on an answer that only the asker sees. */
  readonly pressesAnswer: (who: string, answer: Interaction, label: string) => Interaction;
  readonly chooses: (who: string, said: Pick<Said, "id" | "channel" | "components">, value: string) => Interaction;
  readonly calls: (who: string, channel: string, command: string, values?: Values, files?: Readonly<Record<string, Row>>) => Interaction;
  readonly types: (who: string, channel: string, command: string, option: string, typed: string, values?: Values) => Interaction;
  readonly callsOn: (who: string, said: Said, command: string) => Interaction;
  readonly submits: (who: string, form: Interaction, answers: Values) => Interaction;
  /** The same delivered a second time. */
  readonly again: (interaction: Interaction) => void;
}

export interface ActParts {
  readonly world: World;
  readonly store: Store;
  readonly interactions: Interactions;
  readonly gateway: Pick<Gateway, "dispatch">;
  /** The next interaction reaches the bot after the platform has given up on it. */
  readonly takesLate: () => boolean;
}

interface Part {
  readonly type: number;
  readonly label?: string;
  readonly custom_id: string;
  readonly options?: readonly { readonly label: string; readonly value: string }[];
}

const partsOf = (components: readonly Row[]): readonly Part[] => components.flatMap(({ components: within }) => (within ?? []) as readonly Part[]);

function buttonOf(components: readonly Row[], label: string): Part {
  const buttons = partsOf(components).filter(({ type }) => type === BUTTON);
  const found = buttons.find((button) => button.label === label);
  if (found === undefined) {
    throw new Error(`no button ${label} among ${buttons.map((button) => button.label).join(", ")}`);
  }
  return found;
}

export function makeActs({ world, store, interactions, gateway, takesLate }: ActParts): Acts {
  const delivered = new Map<string, Row>();
  const deliver = (made: Interaction, type: number, more: Row): Interaction => {
    const row = {
      ...{ id: made.id, application_id: world.bot, type, token: made.token, version: 1, guild_id: world.guild, channel_id: made.channel },
      ...{ channel: channelRow(world, made.channel), member: memberRow(world, made.by), locale: "en-GB", guild_locale: "en-GB", entitlements: [] },
      ...{ authorizing_integration_owners: {}, attachment_size_limit: 10_485_760, app_permissions: String(world.allowed.get(made.channel) ?? 0n) },
      ...more,
    };
    delivered.set(made.id, row);
    gateway.dispatch("INTERACTION_CREATE", row);
    return made;
  };
  const person = (who: string): string => idOf(world.people, who);
  const make = (who: string, channel: string, type: number): Interaction => interactions.make(person(who), channel, type, takesLate());
  const onPart = (who: string, said: Pick<Said, "id" | "channel" | "components">, data: Row): Interaction => {
    const found = store.find(said.channel, said.id);
    const bare = { id: said.id, channel_id: said.channel, author: userRow(world.bot, true), content: "", attachments: [], embeds: [], mentions: [] };
    const message = found === null ? { ...bare, mention_roles: [], timestamp: "2026-01-01T00:00:00.000Z", type: 0 } : messageRow(world, found);
    return deliver(make(who, said.channel, COMPONENT), COMPONENT, { message, data: { id: 1, ...data } });
  };
  const optionsOf = (values: Values, files: Readonly<Record<string, Row>>, focused: string | null) => [
    ...Object.entries(values).map(([name, value]) => ({ name, type: STRING, value, ...(name === focused ? { focused: true } : {}) })),
    ...Object.entries(files).map(([name, { id }]) => ({ name, type: ATTACHMENT, value: id })),
  ];
  const commandData = (command: string, options: readonly Row[], files: Readonly<Record<string, Row>>): Row => {
    const [first = "", second] = command.split(" ");
    const attachments = Object.fromEntries(Object.values(files).map((file) => [String(file.id), file]));
    const within = second === undefined ? options : [{ name: second, type: SUBCOMMAND, options }];
    return { id: "800000000000000000", name: first, type: CHAT_INPUT, options: within, resolved: { attachments } };
  };
  const sent = (said: Said) => ({ ...messageRow(world, said), guild_id: world.guild, member: memberRow(world, said.author) });
  return {
    says: (who, channel, text, attachments = []) => {
      const said = store.add(idOf(world.channels, channel), person(who), { content: text, attachments }, []);
      gateway.dispatch("MESSAGE_CREATE", sent(said));
      return said;
    },
    edits: (said, text) => {
      store.change(said, { content: text }, []);
      gateway.dispatch("MESSAGE_UPDATE", sent(said));
    },
    deliverAgain: (said) => gateway.dispatch("MESSAGE_CREATE", sent(said)),
    saysOutOfOrder: (who, channel, text, edited) => {
      const said = store.add(idOf(world.channels, channel), person(who), { content: text }, []);
      const asSaid = sent(said);
      store.change(said, { content: edited }, []);
      gateway.dispatch("MESSAGE_UPDATE", sent(said));
      gateway.dispatch("MESSAGE_CREATE", asSaid);
      return said;
    },
    presses: (who, said, label) => {
      const { custom_id } = buttonOf(said.components, label);
      return onPart(who, said, { component_type: BUTTON, custom_id });
    },
    pressesAnswer: (who, answer, label) => {
      const components = (answer.shown?.components ?? []) as readonly Row[];
      return onPart(who, { id: answer.id, channel: answer.channel, components }, { component_type: BUTTON, ...buttonOf(components, label) });
    },
    chooses: (who, said, value) => {
      const select = partsOf(said.components).find(({ type }) => type === SELECT);
      if (select?.options?.some((option) => option.value === value) !== true) {
        throw new Error(`no choice ${value} among ${JSON.stringify(select?.options)}`);
      }
      return onPart(who, said, { component_type: SELECT, custom_id: select.custom_id, values: [value] });
    },
    calls: (who, channel, command, values = {}, files = {}) =>
      deliver(make(who, idOf(world.channels, channel), COMMAND), COMMAND, { data: commandData(command, optionsOf(values, files, null), files) }),
    types: (who, channel, command, option, typed, values = {}) =>
      deliver(make(who, idOf(world.channels, channel), AUTOCOMPLETE), AUTOCOMPLETE, {
        data: commandData(command, optionsOf({ ...values, [option]: typed }, {}, option), {}),
      }),
    callsOn: (who, said, command) => {
      const resolved = { messages: { [said.id]: messageRow(world, said) } };
      const data = { id: "800000000000000000", name: command, type: ON_MESSAGE, target_id: said.id, resolved };
      return deliver(make(who, said.channel, COMMAND), COMMAND, { data });
    },
    submits: (who, form, answers) => {
      const { custom_id, components } = (form.form ?? {}) as { custom_id: string; components: readonly { component: Part }[] };
      const rows = components.map(({ component: { type, custom_id: name } }, index) => {
        const value = answers[name] ?? "";
        const given = type === SELECT ? { values: value === "" ? [] : [value] } : { value };
        return { type: 18, id: index * 2 + 1, component: { type, id: index * 2 + 2, custom_id: name, ...given } };
      });
      return deliver(make(who, form.channel, SUBMIT), SUBMIT, { data: { custom_id, components: rows } });
    },
    again: ({ id }) => gateway.dispatch("INTERACTION_CREATE", delivered.get(id)),
  };
}
