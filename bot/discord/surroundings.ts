import type { Channels } from "./channels.ts";
import type { Members } from "./members.ts";

/** What tells whether an arrival is for the desk, and who sent it. */
export interface Surroundings {
  readonly guildId: string;
  readonly channels: Pick<Channels, "nameOf">;
  readonly members: Pick<Members, "senderOf">;
}
