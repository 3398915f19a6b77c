import { REST, RESTEvents, type RouteLike } from "discord.js";

const TIMEOUT_MS = 5000;

export interface DoctorRest {
  readonly get: <T>(route: RouteLike) => Promise<T>;
  /** How far this machine's clock was ahead of the platform's at its last answer, in ms; null before any. */
  readonly clockAheadMs: () => number | null;
}

export interface DoctorRestParts {
  readonly token: string;
  readonly now: () => number;
  /** For a local server in place of the platform. */
  readonly api?: string;
  readonly timeoutMs?: number;
}

/** Asks the platform by plain requests: no login, few retries, no waiting for a limit to pass. */
export function doctorRest({ token, now, api, timeoutMs = TIMEOUT_MS }: DoctorRestParts): DoctorRest {
  const rest = new REST({ retries: 1, timeout: timeoutMs, rejectOnRateLimit: () => true, ...(api === undefined ? {} : { api }) });
  // The client that the bot logs in with takes a pasted prefix off too.
  rest.setToken(token.replace(/^(Bot|Bearer)\s*/i, ""));
  let ahead: number | null = null;
  rest.on(RESTEvents.Response, (_request, response) => {
    const date = Date.parse(response.headers.get("date") ?? "");
    ahead = Number.isNaN(date) ? null : now() - date;
  });
  return { get: async <T>(route: RouteLike) => (await rest.get(route)) as T, clockAheadMs: () => ahead };
}
