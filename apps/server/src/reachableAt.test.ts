import type { NetworkInterfaceInfo } from "node:os";
import { expect, test } from "vitest";
import { reachableAt } from "./reachableAt.ts";

const at = (address: string, internal = false) =>
  ({ address, internal, family: address.includes(":") ? "IPv6" : "IPv4" }) as NetworkInterfaceInfo;
const interfaces = { lo: [at("127.0.0.1", true)], wlan: [at("192.168.7.20"), at("fe80::1")], gone: undefined };

test("A server that listens to its own machine alone is reached by no other device", () => {
  for (const hostname of ["127.0.0.1", "localhost", "::1"]) expect(reachableAt(hostname, 4620, interfaces)).toEqual([]);
});

test("A server that listens everywhere is reached at each address of the machine, another at the one it was given", () => {
  expect(reachableAt("0.0.0.0", 4620, interfaces)).toEqual(["http://192.168.7.20:4620/"]);
  expect(reachableAt("kitchens.example", 80, interfaces)).toEqual(["http://kitchens.example:80/"]);
  expect(reachableAt("fd00::2", 80, interfaces)).toEqual(["http://[fd00::2]:80/"]);
});
