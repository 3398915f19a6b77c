import {
  ApplicationCommandAutocompleteCallbackRequestSchema,
  ApplicationCommandUpdateRequestSchema,
  CreateMessageInteractionCallbackRequestSchema,
  IncomingWebhookUpdateRequestPartialSchema,
  MessageCreateRequestSchema,
  MessageEditRequestPartialSchema,
  ModalInteractionCallbackRequestSchema,
  UpdateMessageInteractionCallbackRequestSchema,
} from "discord-api-spec/zod";

/** The platform's published schema of each body the bot may send. */
const schemas: Readonly<Record<string, typeof MessageCreateRequestSchema>> = {
  message: MessageCreateRequestSchema,
  edit: MessageEditRequestPartialSchema,
  followUp: IncomingWebhookUpdateRequestPartialSchema,
  command: ApplicationCommandUpdateRequestSchema,
  "callback 4": CreateMessageInteractionCallbackRequestSchema,
  "callback 5": CreateMessageInteractionCallbackRequestSchema,
  "callback 6": UpdateMessageInteractionCallbackRequestSchema,
  "callback 7": UpdateMessageInteractionCallbackRequestSchema,
  "callback 8": ApplicationCommandAutocompleteCallbackRequestSchema,
  "callback 9": ModalInteractionCallbackRequestSchema,
};

type Row = Readonly<Record<string, unknown>>;
const rowsOf = (value: unknown): readonly Row[] => (Array.isArray(value) ? (value as Row[]) : []);
const lengthOf = (value: unknown): number => (typeof value === "string" ? value.length : 0);

const CONTENT_MAX = 2000;
const EMBEDS_MAX = 6000;
const ROWS_MAX = 5;
const ROW_BUTTONS_MAX = 5;
const NONCE_MAX = 25;
const FORM_PARTS_MAX = 5;
const SELECT = 3;

/** What the platform would refuse in a body, by its schema and by its limits; empty when it takes it. */
export function faultsOf(kind: keyof typeof schemas & string, body: Row): readonly string[] {
  const schema = schemas[kind];
  if (schema === undefined) {
    return [`no body of the kind ${kind} is known`];
  }
  const read = schema.safeParse(body);
  const issues = read.error?.issues ?? [];
  const bySchema = issues.map(({ path, message }) => `${path.map(String).join(".")}: ${message}`);
  const data = kind.startsWith("callback") ? ((body.data ?? {}) as Row) : body;
  return [...bySchema, ...(kind === "callback 9" ? faultsOfForm(data) : kind === "command" ? [] : faultsOfMessage(kind, data))];
}

function faultsOfForm({ components }: Row): readonly string[] {
  return rowsOf(components).length > FORM_PARTS_MAX ? ["a form has five parts at most"] : [];
}

function faultsOfMessage(kind: string, { content, embeds, components, nonce, attachments }: Row): readonly string[] {
  const shown = rowsOf(embeds);
  const isEmpty = lengthOf(content) === 0 && shown.length === 0 && rowsOf(components).length === 0 && rowsOf(attachments).length === 0;
  const embedLength = shown.reduce((sum, embed) => sum + lengthOfEmbed(embed), 0);
  return [
    ...(kind === "message" && isEmpty ? ["an empty message"] : []),
    ...(lengthOf(content) > CONTENT_MAX ? [`content of ${lengthOf(content)} characters`] : []),
    ...(embedLength > EMBEDS_MAX ? [`embeds of ${embedLength} characters`] : []),
    ...(lengthOf(nonce) > NONCE_MAX ? ["a nonce of more than 25 characters"] : []),
    ...faultsOfRows(rowsOf(components)),
  ];
}

function lengthOfEmbed(embed: Row): number {
  const fields = rowsOf(embed.fields).reduce((sum, { name, value }) => sum + lengthOf(name) + lengthOf(value), 0);
  const footer = lengthOf((embed.footer as Row | undefined)?.text);
  return lengthOf(embed.title) + lengthOf(embed.description) + fields + footer;
}

function faultsOfRows(rows: readonly Row[]): readonly string[] {
  const parts = rows.flatMap(({ components }) => rowsOf(components));
  const ids = parts.flatMap(({ custom_id }) => (typeof custom_id === "string" ? [custom_id] : []));
  const overfull = rows.filter(({ components }) => {
    const within = rowsOf(components);
    return within.length > (within.some(({ type }) => type === SELECT) ? 1 : ROW_BUTTONS_MAX);
  });
  const twins = parts.filter(({ options }) => new Set(rowsOf(options).map(({ value }) => value)).size < rowsOf(options).length);
  return [
    ...(rows.length > ROWS_MAX ? [`${rows.length} rows`] : []),
    ...(new Set(ids).size < ids.length ? ["a custom id twice"] : []),
    ...overfull.map(() => "a row with too much in it"),
    ...twins.map(() => "a select with a value twice"),
  ];
}
