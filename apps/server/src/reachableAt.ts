import type { NetworkInterfaceInfo } from "node:os";

/** The network interfaces of a machine, as its system tells them. */
export type Interfaces = Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>;

/** True for names and addresses that lead from a machine to itself alone. */
export function isOfThisMachine(hostname: string): boolean {
  return ["localhost", "::1"].includes(hostname) || hostname.startsWith("127.");
}

/**
 * Addresses at which other devices of the same network reach a server: that of `hostname`, or where it listens on all of
 * them each IPv4 address of the machine; none where it listens to the machine alone.
 */
export function reachableAt(hostname: string, port: number, interfaces: Interfaces): string[] {
  if (isOfThisMachine(hostname)) return [];
  const isAll = ["0.0.0.0", "::"].includes(hostname);
  const found = Object.values(interfaces).flatMap((addresses) => addresses ?? []);
  const hosts = found.filter(({ family, internal }) => family === "IPv4" && !internal).map(({ address }) => address);
  const ownHost = hostname.includes(":") ? `[${hostname}]` : hostname;
  return (isAll ? hosts : [ownHost]).map((host) => `http://${host}:${port}/`);
}
