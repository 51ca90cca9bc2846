import type { IncomingMessage } from "node:http";

/**
 * Where a request comes from. Each trusted proxy adds one address to `X-Forwarded-For`, so the one that the outermost of them
 * saw is that many places from the right; whatever stands further left was written by whoever asks and is not read.
 */
export function addressOf(request: IncomingMessage, trustedProxies: number): string {
  const direct = request.socket.remoteAddress ?? "unknown";
  if (trustedProxies === 0) return direct;
  const header = request.headers["x-forwarded-for"];
  const hops = (Array.isArray(header) ? header.join(",") : (header ?? "")).split(",").map((hop) => hop.trim());
  const found = hops.at(-trustedProxies) ?? "";
  return /^[0-9a-fA-F.:]{2,45}$/.test(found) ? found : direct;
}
