import { Redis } from "ioredis";
import type { Wire, WireMessage } from "./Wire.ts";

/** Rows of more characters than this are not sent along: the other servers read them from the store. */
const MOST_CHARS = 64_000;

const CHANNEL = "halfloaf:";

/** Joins servers over Redis. While it can't be reached the servers go on and look into the store instead. */
export function openRedisWire(url: string, server: string): Wire {
  const options = { lazyConnect: false, maxRetriesPerRequest: 0, enableOfflineQueue: false, autoResubscribe: false };
  const retryStrategy = (count: number) => Math.min(2_000, 50 * count);
  const sending = new Redis(url, { ...options, retryStrategy });
  const hearing = new Redis(url, { ...options, retryStrategy });
  const followed = new Set<string>();
  let hear: (message?: WireMessage) => void = () => {};
  // The loss of the connection is no defect: it is told by `hears`, and made up for.
  sending.on("error", () => {});
  hearing.on("error", () => {});
  hearing.on("ready", () => {
    const again = followed.size === 0 ? Promise.resolve() : hearing.subscribe(...[...followed].map(toChannel));
    again.then(() => hear()).catch(() => {});
  });
  hearing.on("message", (_channel: string, text: string) => {
    const { from, message } = JSON.parse(text) as { from: string; message: WireMessage };
    if (from !== server) hear(message);
  });
  return {
    get hears() {
      return sending.status === "ready" && hearing.status === "ready";
    },
    send: (message) => {
      const text = JSON.stringify({ from: server, message: shorten(message) });
      sending.publish(toChannel(message.kitchen), text).catch(() => {});
    },
    follow: (kitchen) => {
      followed.add(kitchen);
      if (hearing.status === "ready") hearing.subscribe(toChannel(kitchen)).catch(() => {});
    },
    leave: (kitchen) => {
      followed.delete(kitchen);
      if (hearing.status === "ready") hearing.unsubscribe(toChannel(kitchen)).catch(() => {});
    },
    listen: (hearer) => {
      hear = hearer;
    },
    close: async () => {
      sending.disconnect();
      hearing.disconnect();
    },
  };
}

function toChannel(kitchen: string): string {
  return `${CHANNEL}${kitchen}`;
}

function shorten(message: WireMessage): WireMessage {
  if (message.kind !== "rows") return message;
  const chars = message.rows.reduce((sum, { text }) => sum + text.length, 0);
  return chars > MOST_CHARS ? { ...message, rows: [] } : message;
}
