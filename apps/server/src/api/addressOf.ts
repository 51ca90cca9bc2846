import type { IncomingMessage } from "node:http";
import { isIP, isIPv6 } from "node:net";

/**
 * Where a request comes from, as limits count it: an address of IPv4, or the network of an address of IPv6, since one household
 * or one attacker has all of its 2^64 addresses. Each trusted proxy adds one address to `X-Forwarded-For`, so the one that the
 * outermost of them saw is that many places from the right; whatever stands further left was written by whoever asks and is not read.
 */
export function addressOf(request: IncomingMessage, trustedProxies: number): string {
  const direct = request.socket.remoteAddress;
  if (trustedProxies === 0) return toNetwork(direct);
  const header = request.headers["x-forwarded-for"];
  const hops = (Array.isArray(header) ? header.join(",") : (header ?? "")).split(",").map((hop) => hop.trim());
  const found = hops.at(-trustedProxies) ?? "";
  return toNetwork(isIP(found) === 0 ? direct : found);
}

const MAPPED = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i;
const GROUPS = 8;
const GROUPS_OF_NETWORK = 4;

/** The first 64 bits of an address of IPv6; others, and those of IPv4 written in six, stay what they are. */
export function toNetwork(address = "unknown"): string {
  const [, mapped] = MAPPED.exec(address) ?? [];
  if (mapped !== undefined) return mapped;
  const [bare = ""] = address.split("%");
  if (!isIPv6(bare)) return address;
  const [head = [], tail = []] = bare.split("::").map((half) => half.split(":").filter((group) => group !== ""));
  const zeros = Array.from({ length: Math.max(0, GROUPS - head.length - tail.length) }, () => "0");
  const groups = [...head, ...zeros, ...tail].slice(0, GROUPS_OF_NETWORK);
  return `${groups.map((group) => Number.parseInt(group, 16).toString(16)).join(":")}::/64`;
}
