import fc from "fast-check";
import { expect, it } from "vitest";
import { UnsentRows } from "./UnsentRows.ts";

const rows = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 4_000 })), { maxLength: 30 });

it("Rows are sent in order, each once, no message larger than it may be, and acts whole", () => {
  fc.assert(
    fc.property(rows, (acts) => {
      const unsent = new UnsentRows();
      const all: string[] = [];
      for (const [at, [count, chars]] of acts.entries())
        for (let each = 0; each < count; each++) {
          const id = `a${at}-${each + 1}`;
          all.push(id);
          unsent.add({ id, ...(each === 0 ? {} : { act: `a${at}-1` }), note: "x".repeat(chars) } as { id: string });
        }
      const sent: string[] = [];
      while (unsent.size > 0) {
        const batch = unsent.next(900_000);
        expect(batch.length).toBeGreaterThan(0);
        expect(JSON.stringify(batch).length).toBeLessThanOrEqual(900_001);
        for (const { id } of batch) unsent.remove(id);
        sent.push(...batch.map(({ id }) => id));
        const next = all[sent.length];
        const last = sent.at(-1);
        if (next !== undefined) expect(next.split("-")[0]).not.toBe(last?.split("-")[0]);
      }
      expect(sent).toEqual(all);
    }),
    { numRuns: 50, endOnFailure: true },
  );
});
