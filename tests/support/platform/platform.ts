import { type Acts, makeActs } from "./acts.ts";
import { type Asked, type FaultPlan, faultPlan } from "./faults.ts";
import { type Gateway, makeGateway } from "./gateway.ts";
import { type Interaction, type Interactions, isAnswered, makeInteractions } from "./interactions.ts";
import { type RouteParts, route } from "./routes.ts";
import { serve } from "./serve.ts";
import { makeStore, type Said, type Store } from "./store.ts";
import { makeWaiting, type Waiting } from "./waiting.ts";
import { idOf, type World } from "./world.ts";

/** A stand-in for the platform that the true client logs in to: its rules, its limits, and what can go wrong with it. */
export interface Platform extends Acts, Pick<Waiting, "until"> {
  readonly world: World;
  readonly api: string;
  /** A file that a person attaches, where the platform keeps it. */
  readonly file: (name: string, text: string) => Readonly<Record<string, unknown>>;
  readonly store: Store;
  readonly interactions: Interactions;
  readonly faults: FaultPlan;
  readonly gateway: Gateway;
  readonly commands: RouteParts["commands"];
  readonly requests: readonly (Asked & { readonly status: number })[];
  /** Whatever the bot sent that the platform does not take: empty at the end of every test. */
  readonly complaints: readonly string[];
  /** Messages of the bot that are still there, by channel name, oldest first. */
  readonly posts: (channel: string) => readonly Said[];
  readonly answered: (interaction: Interaction) => Promise<Interaction>;
  readonly switches: { hasContent: boolean; refusesOldEdits: boolean; isLate: boolean };
  /** Looks again at everything waited for, for what becomes true without a request. */
  readonly look: () => void;
  readonly stop: () => Promise<void>;
}

/** Opens one on this machine alone; message ids follow the clock handed in. */
export async function openPlatform(world: World, now: () => number): Promise<Platform> {
  const requests: (Asked & { readonly status: number })[] = [];
  const complaints: string[] = [];
  const complain = (line: string): void => void complaints.push(line);
  const switches = { hasContent: true, refusesOldEdits: false, isLate: false };
  const store = makeStore(now);
  const interactions = makeInteractions(complain);
  const faults = faultPlan();
  const commands: RouteParts["commands"] = { list: [], writes: 0 };
  const kept = new Map<string, string>();
  const waiting = makeWaiting(() => lastRequests(requests, complaints));
  const served = await serve({
    token: world.token,
    faults,
    kept: (path) => kept.get(path),
    route: (asked) => route({ ...parts, tell: (event, data) => gateway.dispatch(event, data) }, asked),
    seen: (asked, status) => {
      requests.push({ ...asked, status });
      waiting.changed();
    },
  });
  const url = (): string => `ws://127.0.0.1:${served.port}`;
  const parts = {
    ...{ world, store, interactions, commands, complain, now, gatewayUrl: url },
    refusesOldEdits: () => switches.refusesOldEdits,
  };
  const gateway: Gateway = makeGateway(served.server, world, url, { hasContent: () => switches.hasContent, changed: waiting.changed });
  const acts = makeActs({ world, store, interactions, gateway, takesLate: () => switches.isLate });
  return {
    ...acts,
    ...{ world, store, interactions, faults, gateway, commands, requests, complaints, switches, until: waiting.until, look: waiting.changed },
    api: `http://127.0.0.1:${served.port}/api`,
    file: (name, text) => {
      const path = `/kept/${kept.size + 1}/${name}`;
      kept.set(path, text);
      const address = `http://127.0.0.1:${served.port}${path}`;
      return {
        id: `90000000000000${String(kept.size).padStart(4, "0")}`,
        filename: name,
        size: Buffer.byteLength(text),
        url: address,
        proxy_url: address,
      };
    },
    posts: (channel) => store.messages.filter((said) => said.channel === idOf(world.channels, channel) && said.author === world.bot && !said.isGone),
    answered: (interaction) => waiting.until(() => isAnswered(interaction) && interaction, `an answer to ${interaction.id}`),
    stop: async () => {
      gateway.stop();
      await served.stop();
    },
  };
}

const LAST = 12;
const lastRequests = (requests: readonly (Asked & { readonly status: number })[], complaints: readonly string[]): string =>
  [...complaints, ...requests.slice(-LAST).map(({ method, path, status }) => `${method} ${path} ${status}`)].join("\n");
