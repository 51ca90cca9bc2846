import fc from "fast-check";
import { expect, test } from "vitest";
import { findSchedule } from "./findSchedule.ts";
import { longestPaths } from "./project.ts";
import { isValid, randomProject } from "./randomProject.testing.ts";
import { ScheduleGenerator } from "./ScheduleGenerator.ts";

test("serial, parallel and justified schedules keep every rule, and justification never lengthens one", () => {
  fc.assert(
    fc.property(
      randomProject(12, true),
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 14, maxLength: 14 }),
      (project, priorities) => {
        const n = project.minutes.length;
        const generator = new ScheduleGenerator(project);
        const start = new Int32Array(n);
        const inTime = generator.generateInTime(Float64Array.from(priorities), start);
        expect(isValid(project, start)).toBe(true);
        expect(Math.max(...start.map((s, i) => s + (project.minutes[i] as number)))).toBe(inTime);
        const length = generator.generate(Float64Array.from(priorities), false, start);
        expect(isValid(project, start)).toBe(true);
        expect(generator.justify(start, new Float64Array(n), new Int32Array(n))).toBeLessThanOrEqual(length);
        expect(isValid(project, start)).toBe(true);
      },
    ),
  );
});

test("more rounds never give a longer schedule", () => {
  fc.assert(
    fc.property(randomProject(12, true), (project) => {
      const path = longestPaths(project) as Int32Array;
      const few = findSchedule(project, path, 0, 2, 7).length;
      expect(findSchedule(project, path, 0, 30, 7).length).toBeLessThanOrEqual(few);
    }),
  );
});
