import type { IncomingMessage, Server } from "node:http";
import type { Duplex } from "node:stream";
import { SYNC_PATH } from "@halfloaf/keep/sync";
import { WebSocketServer } from "ws";
import { addressOf } from "../api/addressOf.ts";
import type { SyncHub } from "./SyncHub.ts";

export interface SocketOptions {
  readonly trustedProxies: number;
  /** Origins whose pages may open sockets besides the server's own; what is no browser names none. */
  readonly origins: readonly string[];
}

/** Lets devices open sockets on a server's one port. Whoever may not is told so before anything is set up for it. */
export function takeSockets(server: Server, hub: SyncHub, { trustedProxies, origins }: SocketOptions): void {
  const { limits, journal } = hub.parts;
  // Nothing is compressed: that would take memory for each socket, and a small message could unfold to a large one.
  const sockets = new WebSocketServer({
    noServer: true,
    clientTracking: false,
    perMessageDeflate: false,
    maxPayload: limits.messageBytes,
  });
  server.on("upgrade", (request: IncomingMessage, stream: Duplex, head: Buffer) => {
    const address = addressOf(request, trustedProxies);
    const refuse = (status: string, reason: string) => {
      journal.warn({ address, reason }, "socket-refused");
      stream.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`);
    };
    stream.on("error", () => stream.destroy());
    if (request.url !== SYNC_PATH) return refuse("404 Not Found", "path");
    if (!isOwnPage(request, origins)) return refuse("403 Forbidden", "origin");
    const full = hub.isFull(address);
    if (full === "sockets") return refuse("503 Service Unavailable", full);
    if (full !== undefined) return refuse("429 Too Many Requests", full);
    sockets.handleUpgrade(request, stream, head, (socket) => hub.take(socket, address));
  });
}

/** A browser always names the page's origin; it must be this server's own, or one that was allowed. */
function isOwnPage({ headers: { origin, host } }: IncomingMessage, origins: readonly string[]): boolean {
  if (origin === undefined || origins.includes(origin)) return true;
  try {
    return new URL(origin).host === host;
  } catch {
    return false;
  }
}
