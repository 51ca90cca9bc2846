import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseWith } from "../quantity/index.ts";
import { Movement } from "./movement.ts";
import { buy, stories } from "./stores.testing.ts";

describe("reading a movement", () => {
  test("every movement written as text is read back as it was", () => {
    fc.assert(
      fc.property(stories, (story) => {
        for (const movement of story) {
          const value = JSON.parse(JSON.stringify(movement));
          expect(parseWith(Movement, value)).toEqual({ ok: true, value });
        }
      }),
      { numRuns: 30 },
    );
  });

  test.each([
    [buy("a", { massG: 0 }), "massG"],
    [buy("a", { costMinor: 0.5 }), "costMinor"],
    [{ kind: "eaten", on: "2026-03-02", lot: "a", massG: 1 }, "kind"],
    [{ kind: "used", on: "2026-03-02", lot: "a", massG: -1 }, "massG"],
    [{ kind: "used", on: "today", lot: "a", massG: 1 }, "on"],
    [{ kind: "counted", on: "2026-03-02", lot: "a", massG: -1 }, "massG"],
    [{ kind: "moved", on: "2026-03-02", lot: "a", to: "garage" }, "to"],
    [{ kind: "opened", on: "2026-03-02", lot: "a", massG: 1 }, "massG"],
  ])("%j is refused", (input, path) => {
    const parsed = parseWith(Movement, input);
    expect(parsed.ok ? [] : parsed.issues.map((issue) => issue.path.join("/"))).toEqual([path]);
  });
});
