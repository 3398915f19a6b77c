import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { type Answered, refused } from "./answer.ts";
import type { Asked, Fault, FaultPlan } from "./faults.ts";

export interface ServeParts {
  readonly token: string;
  readonly faults: FaultPlan;
  readonly route: (asked: Asked) => Answered;
  /** The text of a file somebody attached. */
  readonly kept: (path: string) => string | undefined;
  /** Called with every request once it has been answered, or not. */
  readonly seen: (asked: Asked, status: number) => void;
}

/** The platform's side of HTTP on this machine alone, faults included. */
export async function serve(parts: ServeParts): Promise<{ readonly server: Server; readonly port: number; readonly stop: () => Promise<void> }> {
  const server = createServer((incoming, response) => void handle(parts, incoming, response));
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const stop = async (): Promise<void> => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  };
  return { server, port, stop };
}

async function handle(parts: ServeParts, incoming: IncomingMessage, response: ServerResponse): Promise<void> {
  const asked = await readAsked(incoming);
  const auth = incoming.headers.authorization;
  if (auth !== undefined && auth !== `Bot ${parts.token}`) {
    answer(parts, asked, response, refused(401, 0, "401: Unauthorized"));
    return;
  }
  const file = parts.kept(asked.path);
  if (file !== undefined) {
    response.end(file);
    return;
  }
  const fault = parts.faults.of(asked);
  if (fault === null) {
    answer(parts, asked, response, parts.route(asked));
    return;
  }
  if (fault.kind !== "slow down" && fault.when === "after") {
    parts.route(asked);
  }
  spoil(parts, asked, response, fault);
}

function answer(parts: ServeParts, asked: Asked, response: ServerResponse, { status, body, headers = {} }: Answered): void {
  const after = status === 429 && headers["retry-after"] === undefined ? { "retry-after": "1" } : {};
  response.writeHead(status, { ...(body === undefined ? {} : { "content-type": "application/json" }), ...after, ...headers });
  response.end(body === undefined ? "" : JSON.stringify(body));
  parts.seen(asked, status);
}

function spoil(parts: ServeParts, asked: Asked, response: ServerResponse, fault: Fault): void {
  switch (fault.kind) {
    case "status":
      answer(parts, asked, response, { status: fault.status, body: { code: 0, message: "planned fault" } });
      return;
    case "slow down": {
      const isGlobal = fault.scope === "global";
      const headers = {
        "retry-after": String(fault.afterS),
        "x-ratelimit-scope": fault.scope,
        ...(isGlobal ? { "x-ratelimit-global": "true" } : {}),
      };
      answer(parts, asked, response, { status: 429, headers, body: { message: "slow down", retry_after: fault.afterS, global: isGlobal } });
      return;
    }
    case "reset":
      response.destroy();
      break;
    case "hang":
      // Never answered: the client gives up by itself.
      break;
  }
  parts.seen(asked, 0);
}

async function readAsked(incoming: IncomingMessage): Promise<Asked> {
  const chunks: Buffer[] = [];
  for await (const chunk of incoming) {
    chunks.push(chunk as Buffer);
  }
  const bytes = Buffer.concat(chunks);
  const path = (incoming.url ?? "").replace(/^\/api\/v\d+/, "");
  const method = incoming.method ?? "";
  const type = incoming.headers["content-type"] ?? "";
  if (!type.startsWith("multipart/")) {
    return { method, path, body: bytes.length === 0 ? {} : JSON.parse(bytes.toString("utf8")), files: [] };
  }
  const form = await new Response(new Uint8Array(bytes), { headers: { "content-type": type } }).formData();
  const files = [...form.values()].filter((value): value is Exclude<typeof value, string> => typeof value !== "string");
  return {
    method,
    path,
    body: JSON.parse(String(form.get("payload_json") ?? "{}")),
    files: await Promise.all(files.map(async (file) => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) }))),
  };
}
