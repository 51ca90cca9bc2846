import type { IncomingMessage } from "node:http";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addressOf } from "./addressOf.ts";

const from = (remoteAddress: string, forwarded?: string) =>
  ({ socket: { remoteAddress }, headers: { "x-forwarded-for": forwarded } }) as unknown as IncomingMessage;

describe("Where a request comes from", () => {
  it("is one for all addresses of a network of IPv6, however they are written", () => {
    const group = fc.integer({ min: 0, max: 0xffff }).map((value) => value.toString(16));
    const groups = (count: number) => fc.array(group, { minLength: count, maxLength: count });
    fc.assert(
      fc.property(groups(4), groups(4), groups(4), (network, one, other) => {
        const address = (rest: string[]) => addressOf(from([...network, ...rest].join(":")), 0);
        expect(address(one)).toBe(address(other));
        expect(address(one)).toBe(`${network.join(":")}::/64`);
      }),
    );
    for (const written of ["fd00::1", "FD00::", "fd00:0:0:0:5::6", "fd00::7%eth0", "fd00:0000::9"])
      expect(addressOf(from(written), 0)).toBe("fd00:0:0:0::/64");
    expect(addressOf(from("fd00:0:0:1::1"), 0)).toBe("fd00:0:0:1::/64");
  });

  it("is an address of IPv4 by itself, also where the system writes it in six", () => {
    expect(addressOf(from("192.0.2.7"), 0)).toBe("192.0.2.7");
    expect(addressOf(from("::ffff:192.0.2.7"), 0)).toBe("192.0.2.7");
  });

  it("is never what the asker wrote where a proxy is trusted, nor what is no address", () => {
    expect(addressOf(from("10.0.0.1", "6.6.6.6, 192.0.2.7"), 1)).toBe("192.0.2.7");
    expect(addressOf(from("10.0.0.1", "6.6.6.6"), 0)).toBe("10.0.0.1");
    for (const broken of [undefined, "", "hello", "1.2.3", "::::", "1.2.3.4:80"])
      expect(addressOf(from("10.0.0.1", broken), 1)).toBe("10.0.0.1");
  });
});
