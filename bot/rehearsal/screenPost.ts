import type { Instant } from "../../core/kinds.ts";
import type { Card, Form } from "../chat/types.ts";
import type { KeptFile } from "./keepFiles.ts";

/** Something the bot shows: a post, an edit of one, or an answer. */
export type ScreenPost = {
  readonly id: string;
  readonly at: Instant;
  readonly channel: string;
  /** The only one who sees it, or null when the whole channel does. */
  readonly to: string | null;
  /** The key of what it answers. */
  readonly answers: string | null;
  /** The id of the post it replaces. */
  readonly edits: string | null;
} & ({ readonly card: Card; readonly files: readonly KeptFile[] } | { readonly form: Form });
