import { expect, it } from "vitest";
import { openJournal } from "./Journal.ts";
import { throttleJournal } from "./throttleJournal.ts";

it("An address that is refused without end fills no journal; others and what is no refusal are written all the same", () => {
  const lines: string[] = [];
  let [nowMs, leftOut] = [0, 0];
  const journal = throttleJournal(openJournal("info", { write: (line) => void lines.push(line) }), {
    now: () => nowMs,
    onLeftOut: () => leftOut++,
    rate: { burst: 3, perSecond: 1 },
  });
  for (let count = 0; count < 10; count++) journal.warn({ address: "a" }, "request-refused");
  expect([lines.length, leftOut]).toEqual([3, 7]);
  journal.warn({ address: "b" }, "request-refused");
  journal.warn({ reason: "failed" }, "store-trouble");
  journal.info({ address: "a" }, "device-came");
  journal.error({ address: "a" }, "defect");
  expect(lines.length).toBe(7);
  nowMs += 2_000;
  for (let count = 0; count < 10; count++) journal.warn({ address: "a" }, "request-refused");
  expect(lines.length).toBe(9);
});
