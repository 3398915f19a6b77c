import type { Id } from "../../core/kinds.ts";
import { personByIdentity } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { type Incoming, type Role, roles } from "../chat/types.ts";
import { WEEK_PLATFORM } from "../chat/weekPlatform.ts";
import type { DiscordSettings } from "../config/environment.ts";
import type { Called } from "./drawLine.ts";

/** Who people are, both ways, between the week's names and the platform's ids. */
export interface Members {
  /** Someone with a handle is the week's person; anyone else is known by the platform's id alone. */
  readonly senderOf: (userId: string, roleIds: readonly string[]) => Incoming["sender"];
  readonly calledOf: (called: Id<"person"> | Role) => Called | null;
}

/** Joins the settings to the people of the record. */
export function membersOf(reader: Reader, { people, roleIds }: Pick<DiscordSettings, "people" | "roleIds">): Members {
  const handles = new Map([...people].map(([handle, id]) => [id, handle]));
  return {
    senderOf: (userId, held) => {
      const handle = handles.get(userId);
      return handle === undefined
        ? { platform: "discord", platformId: userId, roleIds: held }
        : { platform: WEEK_PLATFORM, platformId: handle, roleIds: held };
    },
    calledOf: (called) => {
      const role = roles.find((known) => known === called);
      const id = role === undefined ? userOf(reader, people, called) : roleIds[role];
      return id === null ? null : { kind: role === undefined ? "person" : "role", id };
    },
  };
}

function userOf(reader: Reader, people: ReadonlyMap<string, string>, called: Id<"person"> | Role): string | null {
  const found = [...people].find(([handle]) => personByIdentity(reader, WEEK_PLATFORM, handle)?.id === called);
  return found?.[1] ?? null;
}
