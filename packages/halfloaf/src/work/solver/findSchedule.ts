import { createRandomSource } from "../../quantity/index.ts";
import { NO_PATH, type Project } from "./project.ts";
import { ScheduleGenerator } from "./ScheduleGenerator.ts";

/** A schedule and its length. */
export interface Schedule {
  readonly start: Int32Array;
  readonly length: number;
}

/**
 * A good schedule of a plain project, by priorities drawn around latest finish times and around the best schedule so
 * far, each justified as long as that helps.
 *
 * Ends after `rounds` schedules or as soon as one is as short as `bound`. `path` is that of `longestPaths`.
 */
export function findSchedule(
  project: Project,
  path: Int32Array,
  bound: number,
  rounds: number,
  seed: number,
): Schedule {
  const n = project.minutes.length;
  const generator = new ScheduleGenerator(project);
  const random = createRandomSource(seed);
  const span = path[n - 1] as number;
  const latestEnd = (i: number) =>
    span - Math.max(NO_PATH, path[i * n + n - 1] as number) + (project.minutes[i] as number);
  const priority = new Float64Array(n);
  const start = new Int32Array(n);
  const mirrored = new Int32Array(n);
  const base = new Float64Array(n);
  let best = { start: start.slice(), length: Number.POSITIVE_INFINITY };
  for (let round = 0; round < rounds && best.length > bound; round++) {
    const isNear = round > 8 && round % 2 === 1;
    for (let i = 0; i < n; i++) {
      if (round < 2) priority[i] = latestEnd(i);
      else if (isNear) priority[i] = (base[i] as number) + (random() < 0.2 ? (random() - 0.5) * span * 0.5 : 0);
      else priority[i] = latestEnd(i) + (random() - 0.5) * span * 0.35;
    }
    let length = round === 1 ? generator.generateInTime(priority, start) : generator.generate(priority, false, start);
    if (length < best.length) best = { start: start.slice(), length };
    for (let turn = 0, shorter = true; turn < 3 && shorter && best.length > bound; turn++) {
      const justified = generator.justify(start, priority, mirrored);
      shorter = justified < length;
      length = justified;
      if (length < best.length) best = { start: start.slice(), length };
    }
    if (length <= best.length) for (let i = 0; i < n; i++) base[i] = start[i] as number;
  }
  return best;
}
