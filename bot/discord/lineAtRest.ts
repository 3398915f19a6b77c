import { type Client, Events, Status } from "discord.js";

const atRest: ReadonlySet<Status> = new Set([Status.Ready, Status.Idle, Status.Disconnected]);
const arrivals = [Events.ShardReady, Events.ShardResume, Events.ShardDisconnect, Events.Invalidated] as const;

/** Resolves once the client's line stands or is over for good: a client destroyed while it waits to connect again does so all the same. */
export function lineAtRest(client: Client): Promise<void> {
  if (client.ws.shards.every(({ status }) => atRest.has(status))) {
    return Promise.resolve();
  }
  return new Promise((resolve) => {
    for (const arrival of arrivals) {
      client.once(arrival, () => resolve());
    }
  });
}
