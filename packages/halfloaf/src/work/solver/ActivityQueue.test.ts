import fc from "fast-check";
import { expect, test } from "vitest";
import { ActivityQueue } from "./ActivityQueue.ts";

test("atoms come out most active first, and come back when their level is undone", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 60 }), (bumps) => {
      const queue = new ActivityQueue(10, 0.9);
      for (const atom of bumps) {
        queue.bump(atom);
        queue.decayAll();
      }
      const drain = () => {
        const out: number[] = [];
        while (!queue.isEmpty()) out.push(queue.pop(out.length));
        return out;
      };
      const first = drain();
      expect(new Set(first)).toEqual(new Set(bumps));
      const activities = first.map((atom) => queue.activity[atom] as number);
      expect(activities).toEqual([...activities].sort((a, b) => b - a));
      queue.backTo(1);
      expect(drain()).toEqual(first.slice(1));
    }),
  );
});
