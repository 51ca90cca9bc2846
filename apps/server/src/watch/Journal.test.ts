import fc from "fast-check";
import { expect, it } from "vitest";
import { openJournal } from "./Journal.ts";

it("Whatever stands in a fact, an event is one line of printable JSON with its time in UTC, and comes back as it was", () => {
  const lines: string[] = [];
  const journal = openJournal("info", { write: (line) => void lines.push(line) });
  const hostile = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.constantFrom("a\nb", '"}\n{"level":30', "\u001b[2J", "\r\u0000"),
  );
  fc.assert(
    fc.property(hostile, (path) => {
      lines.length = 0;
      journal.warn({ path }, "request-refused");
      const [line = "", ...others] = lines;
      expect(others).toEqual([]);
      expect(line.trimEnd()).not.toMatch(/\p{Cc}/u);
      const { time, msg, path: told } = JSON.parse(line) as Record<string, string>;
      expect([msg, told]).toEqual(["request-refused", path]);
      expect(time).toMatch(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/);
    }),
  );
});
