import type { Asked } from "./faults.ts";
import { userRow } from "./rows.ts";
import type { World } from "./world.ts";

/** The platform counts from the first moment of 2015. */
const EPOCH_MS = 1_420_070_400_000;

type Row = Readonly<Record<string, unknown>>;

/** A message as the platform keeps it. */
export interface Said {
  readonly id: string;
  readonly channel: string;
  readonly author: string;
  readonly saidAtMs: number;
  readonly nonce: string | null;
  readonly attachments: readonly Row[];
  content: string;
  embeds: readonly Row[];
  components: readonly Row[];
  files: Asked["files"];
  /** Ids of the people and roles that were called when it came. */
  readonly calls: readonly string[];
  editedAtMs: number | null;
  edits: number;
  isPinned: boolean;
  isGone: boolean;
}

export interface Store {
  readonly messages: readonly Said[];
  readonly add: (channel: string, author: string, body: Row, files: Asked["files"]) => Said;
  readonly change: (said: Said, body: Row, files: Asked["files"]) => void;
  readonly find: (channel: string, id: string) => Said | null;
  /** Newest first, as the platform gives it. */
  readonly page: (channel: string, query: URLSearchParams) => readonly Said[];
}

const MENTION = /<@(&?)(\d+)>/g;

/** Whom a body wakes: what it mentions and does not forbid. */
function callsOf(body: Row): readonly string[] {
  const allowed = (body.allowed_mentions ?? { parse: ["users", "roles"] }) as { parse?: string[]; users?: string[]; roles?: string[] };
  return [...String(body.content ?? "").matchAll(MENTION)].flatMap(([, isRole, id = ""]) => {
    const kind = isRole === "&" ? "roles" : "users";
    return allowed.parse?.includes(kind) === true || allowed[kind]?.includes(id) === true ? [id] : [];
  });
}

const rows = (value: unknown): readonly Row[] => (Array.isArray(value) ? (value as Row[]) : []);

/** Keeps the history of every channel; ids follow the clock handed in and never stand still. */
export function makeStore(now: () => number): Store {
  const messages: Said[] = [];
  let newest = 0n;
  const nextId = (): string => {
    const byClock = BigInt(now() - EPOCH_MS) << 22n;
    newest = byClock > newest ? byClock : newest + 1n;
    return newest.toString();
  };
  return {
    messages,
    add: (channel, author, body, files) => {
      const said: Said = {
        id: nextId(),
        channel,
        author,
        saidAtMs: now(),
        nonce: body.nonce === undefined ? null : String(body.nonce),
        attachments: rows(body.attachments),
        content: String(body.content ?? ""),
        embeds: rows(body.embeds),
        components: rows(body.components),
        files,
        calls: callsOf(body),
        editedAtMs: null,
        edits: 0,
        isPinned: false,
        isGone: false,
      };
      messages.push(said);
      return said;
    },
    change: (said, body, files) => {
      said.content = body.content === undefined ? said.content : String(body.content);
      said.embeds = body.embeds === undefined ? said.embeds : rows(body.embeds);
      said.components = body.components === undefined ? said.components : rows(body.components);
      said.files = files.length > 0 || body.attachments !== undefined ? files : said.files;
      said.editedAtMs = Math.max(now(), said.saidAtMs + said.edits + 1);
      said.edits += 1;
    },
    find: (channel, id) => messages.find((said) => said.channel === channel && said.id === id && !said.isGone) ?? null,
    page: (channel, query) => {
      const limit = Number(query.get("limit") ?? 50);
      const after = query.get("after");
      const before = query.get("before");
      const kept = messages.filter(
        (said) =>
          said.channel === channel &&
          !said.isGone &&
          (after === null || BigInt(said.id) > BigInt(after)) &&
          (before === null || BigInt(said.id) < BigInt(before)),
      );
      return (after === null ? kept.slice(-limit) : kept.slice(0, limit)).reverse();
    },
  };
}

/** A message as the platform sends it. */
export const messageRow = (world: World, said: Said) => ({
  id: said.id,
  channel_id: said.channel,
  author: userRow(said.author, said.author === world.bot),
  content: said.content,
  timestamp: new Date(said.saidAtMs).toISOString(),
  edited_timestamp: said.editedAtMs === null ? null : new Date(said.editedAtMs).toISOString(),
  tts: false,
  mention_everyone: false,
  mentions: [],
  mention_roles: [],
  attachments: [
    ...said.attachments,
    ...said.files.map(({ name, bytes }, index) => ({
      id: `${BigInt(said.id) + BigInt(index)}`,
      filename: name,
      size: bytes.length,
      url: "",
      proxy_url: "",
    })),
  ],
  embeds: said.embeds,
  components: said.components,
  pinned: said.isPinned,
  type: 0,
  nonce: said.nonce ?? undefined,
});
