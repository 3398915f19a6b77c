import { DiscordAPIError, HTTPError, RateLimitError } from "discord.js";
import { fault, type Verdict } from "../doctor/finding.ts";

const TOKEN_REMEDY = "Developer Portal > your application > Bot > Reset Token, and set DISCORD_TOKEN to the new one";

/** What it means that the platform did not answer a question. */
export function doctorFault(error: unknown): Verdict {
  if (error instanceof RateLimitError) {
    return fault(`the platform asks to wait ${Math.ceil(error.retryAfter / 1000)} s`, "Wait, and run this again");
  }
  if (error instanceof DiscordAPIError) {
    return error.status === 401
      ? fault("the platform does not accept DISCORD_TOKEN", TOKEN_REMEDY)
      : fault(`the platform answers ${error.status} ${error.message}`, "Set the ids again by Copy ID in the chat, and run this again");
  }
  if (error instanceof HTTPError) {
    return fault(`the platform answers ${error.status}`, "See discordstatus.com, and run this again later");
  }
  if (error instanceof Error && error.name === "AbortError") {
    return fault("the platform does not answer in time", "Check the network and any proxy; see discordstatus.com, and run this again later");
  }
  const cause = error instanceof Error && error.cause instanceof Error ? `: ${error.cause.message}` : "";
  return fault(
    `the platform is not reached: ${error instanceof Error ? error.message : String(error)}${cause}`,
    "Check the network, name server and firewall: the bot needs https to discord.com",
  );
}
