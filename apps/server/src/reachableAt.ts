import type { NetworkInterfaceInfo } from "node:os";

/**
 * Addresses at which other devices of the same network reach a server: that of `hostname`, or where it listens on all of
 * them each IPv4 address of the machine; none where it listens to the machine alone. `interfaces` are those of the system.
 */
export function reachableAt(
  hostname: string,
  port: number,
  interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
): string[] {
  if (["localhost", "::1"].includes(hostname) || hostname.startsWith("127.")) return [];
  const isAll = ["0.0.0.0", "::"].includes(hostname);
  const found = Object.values(interfaces).flatMap((addresses) => addresses ?? []);
  const hosts = found.filter(({ family, internal }) => family === "IPv4" && !internal).map(({ address }) => address);
  const ownHost = hostname.includes(":") ? `[${hostname}]` : hostname;
  return (isAll ? hosts : [ownHost]).map((host) => `http://${host}:${port}/`);
}
