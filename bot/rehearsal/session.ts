import type { Form, Incoming } from "../chat/types.ts";
import type { RehearsalWorld } from "./rehearsalWorld.ts";
import type { Screen } from "./screen.ts";

/** Something a person did, kept so that it can be delivered again. */
export interface Delivery {
  readonly person: string;
  readonly incoming: Incoming;
}

export interface OwnMessage {
  readonly id: string;
  readonly channel: string;
  /** Epoch ms of the newest edit, 0 when it is as first sent. */
  readonly editedAt: number;
}

interface OpenForm {
  readonly form: Form;
  readonly channel: string;
  readonly answers: ReadonlyMap<string, string>;
}

/** Where the one at the keyboard stands: as whom, in which channel, what came before. */
export interface Session {
  readonly world: RehearsalWorld;
  readonly screen: Screen;
  person: string;
  channel: string;
  last: Delivery | null;
  readonly messages: Map<string, OwnMessage>;
  readonly forms: Map<string, OpenForm>;
}

/** Why a line could not be played, or null when it was. */
export type Misuse = string | null;
