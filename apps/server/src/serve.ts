import type { AddressInfo } from "node:net";
import { serve as listen } from "@hono/node-server";
import { type AppOptions, createApp } from "./createApp.ts";

/** A server that listens. */
export interface Serving {
  readonly port: number;
  close(): Promise<void>;
}

/** Serves the app on a port; 0 takes a free one. Refuses with the system's error where the port is taken. */
export function serve(options: AppOptions, port: number, hostname: string): Promise<Serving> {
  return new Promise((resolve, reject) => {
    const server = listen({ fetch: createApp(options).fetch, port, hostname }, ({ port: taken }: AddressInfo) =>
      resolve({
        port: taken,
        close: () =>
          new Promise((done) => {
            server.close(() => done());
            if ("closeAllConnections" in server) server.closeAllConnections();
          }),
      }),
    );
    server.on("error", reject);
  });
}
