import { roles } from "../chat/types.ts";
import type { EnvironmentReading } from "../config/environment.ts";
import { type Check, fault, ok, warn } from "./finding.ts";

/** A line for each fault of the environment, or what it sets up. */
export function environmentChecks(reading: EnvironmentReading): readonly Check[] {
  if (reading.kind === "faulty") {
    return reading.line.split("\n").map((line) => ({
      name: "environment",
      look: () => fault(line, "Set it as README says under Connecting the real chat"),
    }));
  }
  const { discord } = reading;
  if (discord === null) {
    const look = () => warn("no DISCORD_TOKEN: npm start opens the rehearsal", "For the real chat set it: Developer Portal > Bot > Reset Token");
    return [{ name: "environment", look }];
  }
  const unset = roles.filter((role) => discord.roleIds[role] === null);
  return [
    { name: "environment", look: () => ok(`token and guild are set; channels: ${discord.channels.size}, people: ${discord.people.size}`) },
    {
      name: "roles",
      look: () =>
        unset.length === 0
          ? ok("viewer, rep, technician and lead have an id")
          : warn(
              `nobody is ${unset.join(", ")}: ${unset.map((role) => `DISCORD_ROLE_${role.toUpperCase()}`).join(", ")} not set`,
              "Server Settings > Roles > the role > Copy Role ID (User Settings > Advanced > Developer Mode shows it)",
            ),
    },
  ];
}
