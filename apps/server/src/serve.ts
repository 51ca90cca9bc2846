import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { serve as listen } from "@hono/node-server";
import { type AppOptions, createApp, type HostOptions } from "./createApp.ts";
import { USUAL_LIMITS } from "./limits.ts";
import { type SocketOptions, takeSockets } from "./sync/takeSockets.ts";

/** A server that listens. */
export interface Serving {
  readonly port: number;
  close(): Promise<void>;
}

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
            const closed = new Promise<void>((done) => server.close(() => done()));
            await host?.hub.close();
            if ("closeAllConnections" in server) server.closeAllConnections();
            await closed;
          },
        }),
    ) as Server;
    if (host !== undefined) takeSockets(server, host.hub, host);
    server.on("error", reject);
  });
}
