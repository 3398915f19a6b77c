import type { Server } from "node:http";
import type { Duplex } from "node:stream";
import { type WebSocket, WebSocketServer } from "ws";
import { guildRow, userRow } from "./rows.ts";
import type { World } from "./world.ts";

const MESSAGE_CONTENT = 1 << 15;
const DISALLOWED_INTENTS = 4014;
const BAD_TOKEN = 4004;

interface Frame {
  readonly op: 0;
  readonly t: string;
  readonly s: number;
  readonly d: unknown;
}

/** One life of the bot at the gateway: what was sent to it, whether or not it was there. */
interface Session {
  readonly id: string;
  readonly frames: Frame[];
  socket: WebSocket | null;
  isLost: boolean;
}

export interface Gateway {
  /** To the session, if there is one that has not been lost; a closed connection gets it on resuming. */
  readonly dispatch: (event: string, data: unknown) => void;
  /** Cuts the line; the session can be resumed unless it is lost. */
  readonly drop: (how: "resumable" | "lost") => void;
  /** Tells the bot that its session is void. */
  readonly invalidate: (canResume: boolean) => void;
  readonly close: (code: number) => void;
  /** The next so many connections are refused. */
  readonly refuse: (times: number) => void;
  /** No sign of life from now on. */
  readonly goSilent: () => void;
  readonly isConnected: () => boolean;
  readonly counts: { identified: number; resumed: number; refused: number };
  readonly stop: () => void;
}

export interface GatewayRules {
  /** Whether the application's switch for the content of messages is on. */
  readonly hasContent: () => boolean;
  readonly changed: () => void;
}

/** The platform's gateway for one guild and one bot: identify, heartbeat, resume with replay. */
export function makeGateway(server: Server, world: World, url: () => string, rules: GatewayRules): Gateway {
  const sockets = new WebSocketServer({ noServer: true });
  const counts = { identified: 0, resumed: 0, refused: 0 };
  let session: Session | null = null;
  let refusals = 0;
  let isSilent = false;

  const send = (to: Session, event: string, data: unknown): void => {
    const frame: Frame = { op: 0, t: event, s: to.frames.length + 1, d: data };
    to.frames.push(frame);
    to.socket?.send(JSON.stringify(frame));
  };
  const onUpgrade = (request: Parameters<WebSocketServer["handleUpgrade"]>[0], raw: Duplex, head: Buffer): void => {
    if (refusals > 0) {
      refusals -= 1;
      counts.refused += 1;
      raw.destroy();
      rules.changed();
      return;
    }
    sockets.handleUpgrade(request, raw, head, (socket) => greet(socket));
  };
  server.on("upgrade", onUpgrade);

  function greet(socket: WebSocket): void {
    socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: 41_250 } }));
    socket.on("error", () => {});
    socket.on("close", () => {
      if (session?.socket === socket) {
        session.socket = null;
      }
      rules.changed();
    });
    socket.on("message", (raw) => {
      const { op, d } = JSON.parse(String(raw)) as { op: number; d: Readonly<Record<string, unknown>> };
      if (op === 1 && !isSilent) {
        socket.send(JSON.stringify({ op: 11 }));
      }
      if (op === 2) {
        identify(socket, d);
      }
      if (op === 6) {
        resume(socket, d);
      }
      rules.changed();
    });
  }

  function identify(socket: WebSocket, { token, intents }: Readonly<Record<string, unknown>>): void {
    if (token !== world.token) {
      socket.close(BAD_TOKEN);
      return;
    }
    if ((Number(intents) & MESSAGE_CONTENT) !== 0 && !rules.hasContent()) {
      socket.close(DISALLOWED_INTENTS);
      return;
    }
    counts.identified += 1;
    const opened: Session = { id: `session${counts.identified}`, frames: [], socket, isLost: false };
    session = opened;
    const application = { id: world.bot, flags: 0 };
    const guilds = [{ id: world.guild, unavailable: true }];
    send(opened, "READY", { v: 10, user: userRow(world.bot, true), session_id: opened.id, resume_gateway_url: url(), guilds, application });
    send(opened, "GUILD_CREATE", guildRow(world));
  }

  function resume(socket: WebSocket, { session_id, seq }: Readonly<Record<string, unknown>>): void {
    if (session === null || session.isLost || session.id !== session_id) {
      socket.send(JSON.stringify({ op: 9, d: false }));
      return;
    }
    counts.resumed += 1;
    session.socket = socket;
    for (const frame of session.frames.filter(({ s }) => s > Number(seq))) {
      socket.send(JSON.stringify(frame));
    }
    send(session, "RESUMED", {});
  }

  return {
    counts,
    dispatch: (event, data) => {
      if (session !== null && !session.isLost) {
        send(session, event, data);
      }
    },
    drop: (how) => {
      if (session !== null) {
        session.isLost = session.isLost || how === "lost";
        const { socket } = session;
        session.socket = null;
        socket?.terminate();
      }
    },
    invalidate: (canResume) => {
      if (session !== null) {
        session.isLost = !canResume;
        session.socket?.send(JSON.stringify({ op: 9, d: canResume }));
      }
    },
    close: (code) => session?.socket?.close(code),
    refuse: (times) => {
      refusals = times;
    },
    goSilent: () => {
      isSilent = true;
    },
    isConnected: () => session?.socket !== null && session?.socket !== undefined,
    stop: () => {
      server.off("upgrade", onUpgrade);
      for (const socket of sockets.clients) {
        socket.terminate();
      }
      sockets.close();
    },
  };
}
