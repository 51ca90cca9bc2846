import fc from "fast-check";
import { expect, test } from "vitest";
import { compareStamps, nextStamp, type Stamp } from "./stamp.ts";

const clocks = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 40 });

test("stamps of one device rise, however its clock jumps", () => {
  fc.assert(
    fc.property(clocks, (readings) => {
      let latest: Stamp | undefined;
      for (const nowMs of readings) {
        const next = nextStamp(latest, nowMs);
        if (latest !== undefined) expect(compareStamps(latest, next)).toBeLessThan(0);
        expect(next.atMs).toBeGreaterThanOrEqual(nowMs);
        latest = next;
      }
    }),
  );
});

test("a device never writes before what it has read, though its clock is slow", () => {
  expect(nextStamp({ atMs: 900, tick: 4 }, 100)).toEqual({ atMs: 900, tick: 5 });
  expect(nextStamp({ atMs: 900, tick: 4 }, 901.7)).toEqual({ atMs: 901, tick: 0 });
});
