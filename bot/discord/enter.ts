import { DiscordAPIError, DiscordjsErrorCodes, Events } from "discord.js";
import type { Command } from "../chat/defineCommand.ts";
import type { DiscordSettings } from "../config/environment.ts";
import { missingPermissions } from "./missingPermissions.ts";
import type { OpenClient } from "./openClient.ts";
import { registerCommands } from "./registerCommands.ts";

export interface EnterParts {
  readonly token: string;
  readonly settings: DiscordSettings;
  readonly commands: readonly Command[];
}

/** Logs in once, looks whether everything needed is there and registers the commands; false when the chat lets the bot not in. */
export async function enter({ token, settings, commands }: EnterParts, { client, ended, end }: OpenClient): Promise<boolean> {
  const ready = new Promise<true>((resolve) => client.once(Events.ClientReady, () => resolve(true)));
  try {
    const login = client.login(token);
    if (!(await Promise.race([login.then(() => ready), ended.then(() => false)])) || !client.isReady()) {
      login.catch(() => {});
      return false;
    }
    const fault = await faultOf(client, settings);
    if (fault !== null) {
      end("settings", fault);
      return false;
    }
    await registerCommands(client.application.commands, settings.guildId, commands);
    return true;
  } catch (error) {
    const [kind, why] = whyNot(error);
    end(kind, why);
    return false;
  }
}

async function faultOf(client: Parameters<typeof missingPermissions>[0], settings: DiscordSettings): Promise<string | null> {
  if (!client.guilds.cache.has(settings.guildId)) {
    return `the bot is no member of the guild ${settings.guildId}: invite it, or mend DISCORD_GUILD_ID`;
  }
  const missing = missingPermissions(client, settings);
  return missing.length === 0 ? null : `${missing.join("\n")}\nMend it in the channel's settings, Permissions, or in DISCORD_CHANNELS.`;
}

function whyNot(error: unknown): ["settings" | "lost", string] {
  if (isBadToken(error)) {
    return ["settings", "the chat does not accept DISCORD_TOKEN: make a new one in the developer portal, Bot, Reset Token"];
  }
  if (error instanceof DiscordAPIError && error.status === 403) {
    return ["settings", `the chat does not let the bot do this: ${error.message} (invite it with the scopes bot and applications.commands)`];
  }
  if (error instanceof Error && /disallowed intents/i.test(error.message)) {
    return ["settings", "the message content switch is off: turn it on in the developer portal, Bot, Message Content Intent"];
  }
  return ["lost", `the chat could not be entered: ${error instanceof Error ? error.message : String(error)}`];
}

function isBadToken(error: unknown): boolean {
  return (
    (error instanceof DiscordAPIError && error.status === 401) ||
    (error instanceof Error && "code" in error && error.code === DiscordjsErrorCodes.TokenInvalid)
  );
}
