import type { Server } from "node:http";
import type { AddressInfo, Socket } from "node:net";
import type { Duplex } from "node:stream";
import { serve as listen } from "@hono/node-server";
import { toNetwork } from "./api/addressOf.ts";
import { type AppOptions, createApp, type HostOptions } from "./createApp.ts";
import { USUAL_LIMITS } from "./limits.ts";
import { type SocketOptions, takeSockets } from "./sync/takeSockets.ts";

/** A server that listens. */
export interface Serving {
  readonly port: number;
  /** Takes nothing new any more, tells devices to come again, and ends once the requests under way are answered. */
  close(): Promise<void>;
}

/** How long requests under way have to be answered at the end, and how often it is looked for those that are, in milliseconds. */
const DRAIN_MS = { most: 5_000, look: 50 };

export interface ServeOptions extends AppOptions {
  readonly host?: HostOptions & SocketOptions;
}

/** Serves the app on a port; 0 takes a free one. Refuses with the system's error where the port is taken. */
export function serve(options: ServeOptions, port: number, hostname: string): Promise<Serving> {
  const { host } = options;
  const { requestMs } = host?.parts.limits ?? USUAL_LIMITS;
  // Who sends a request too slowly is cut.
  const serverOptions = {
    requestTimeout: requestMs,
    headersTimeout: requestMs,
    connectionsCheckingInterval: requestMs / 2,
  };
  return new Promise((resolve, reject) => {
    const server = listen(
      { fetch: createApp(options).fetch, port, hostname, serverOptions },
      ({ port: taken }: AddressInfo) =>
        resolve({
          port: taken,
          close: async () => {
            const closed = close(server);
            await host?.hub.close();
            await closed;
          },
        }),
    ) as Server;
    if (host !== undefined) {
      takeSockets(server, host.hub, host);
      server.on("clientError", (error: BrokenRequest, stream: Socket) => {
        // What comes after the first fault of a connection is not looked at.
        if (!stream.writable) return void stream.destroy();
        host.parts.journal.warn({ address: toNetwork(stream.remoteAddress), reason: error.code }, "request-broken");
        refuseBroken(error, stream);
      });
    }
    server.on("error", reject);
  });
}

type BrokenRequest = Error & { readonly code?: string };

/** What is answered to what is no HTTP, by the code that Node gives it; **Source**: its documentation of `clientError`. */
const BROKEN: Readonly<Record<string, string>> = {
  HPE_HEADER_OVERFLOW: "431 Request Header Fields Too Large",
  HPE_CHUNK_EXTENSIONS_OVERFLOW: "413 Payload Too Large",
  ERR_HTTP_REQUEST_TIMEOUT: "408 Request Timeout",
};

function refuseBroken({ code = "" }: BrokenRequest, stream: Duplex): void {
  if (code === "ECONNRESET") stream.destroy();
  else stream.end(`HTTP/1.1 ${BROKEN[code] ?? "400 Bad Request"}\r\nConnection: close\r\n\r\n`);
}

async function close(server: Server): Promise<void> {
  const closed = new Promise<void>((done) => server.close(() => done()));
  // A connection that rests between two requests keeps nobody waiting.
  const looking = setInterval(() => server.closeIdleConnections(), DRAIN_MS.look);
  const cutting = setTimeout(() => server.closeAllConnections(), DRAIN_MS.most);
  await closed;
  clearInterval(looking);
  clearTimeout(cutting);
}
