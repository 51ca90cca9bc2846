import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createRandomSource } from "../../quantity/index.ts";
import { arbitraryWeek } from "../check/randomWeek.testing.ts";
import { Candidates } from "./Candidates.ts";
import { ChangeList } from "./ChangeList.ts";
import { Reordering } from "./Reordering.ts";
import { WeekState } from "./WeekState.ts";

describe("a move of the servings there are", () => {
  it("changes each sitting at most once, to a dish that may be served there, and serves every dish as often as before", () => {
    const sizes = new Set<number>();
    fc.assert(
      fc.property(arbitraryWeek(), fc.nat({ max: 999 }), (week, seed) => {
        const state = new WeekState(week);
        const candidates = new Candidates(week, state);
        if (candidates.hasGap) return;
        const random = createRandomSource(seed);
        state.change(week.sittings.map((_, sitting) => ({ sitting, dish: candidates.draw(sitting, random) })));
        const changes = new ChangeList();
        const reordering = new Reordering(week, state, candidates, changes, random);
        const dishes = Array.from(state.dishOf).sort();
        for (let move = 0; move < 100; move++) {
          changes.clear();
          reordering.propose();
          const list = changes.list();
          sizes.add(list.length);
          expect(new Set(list.map(({ sitting }) => sitting)).size).toBe(list.length);
          for (const { sitting, dish } of list) {
            expect(state.mayServe(dish, sitting)).toBe(true);
            expect(dish).not.toBe(state.dishOf[sitting]);
          }
          state.change(list);
          expect(Array.from(state.dishOf).sort()).toEqual(dishes);
        }
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect([0, 2, 3, 4].filter((size) => !sizes.has(size))).toEqual([]);
  });
});
