import type { NetworkInterfaceInfo } from "node:os";
import { expect, test } from "vitest";
import { tellWhere } from "./tellWhere.ts";

const at = (address: string, internal = false) => ({ address, internal, family: "IPv4" }) as NetworkInterfaceInfo;
const interfaces = { lo: [at("127.0.0.1", true)], wlan: [at("192.168.7.20")] };

test("A server of this machine alone tells in one line what lets phones in, and the address that they would have", () => {
  const lines = tellWhere("127.0.0.1", 4620, interfaces);
  expect(lines[0]).toBe("Halfloaf is served at http://127.0.0.1:4620/");
  expect(lines[1]).toMatch(/^Only this machine .* HOST=0\.0\.0\.0 npm start, .* at http:\/\/192\.168\.7\.20:4620\/$/);
});

test("A server for the network tells where phones reach it; a machine without a network tells no address", () => {
  expect(tellWhere("0.0.0.0", 4620, interfaces).slice(0, 2)).toEqual([
    "Halfloaf is served at http://localhost:4620/",
    "Phones in the same network reach it at http://192.168.7.20:4620/",
  ]);
  expect(tellWhere("127.0.0.1", 4620, {})[1]).toMatch(/phones in the same network reach it$/);
  expect(tellWhere("::1", 4620, {})[0]).toBe("Halfloaf is served at http://[::1]:4620/");
});
