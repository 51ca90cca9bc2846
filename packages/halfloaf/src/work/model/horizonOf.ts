import { ovenMinutes, type WorkProblem } from "../problem.ts";

/**
 * A time by which every meal that can be cooked at all can be served.
 *
 * In a shortest schedule there is no minute in which no step runs, no least wait goes on, the oven changes no
 * temperature, nothing is washed and no step is waited for that has an earliest start: such a minute could be cut out.
 */
export function horizonOf(problem: WorkProblem): number {
  const longest = problem.steps.map(({ minutes }) => minutes);
  for (const { from, leastMinutes } of problem.waits) {
    longest[from] = Math.max(longest[from] as number, (problem.steps[from]?.minutes as number) + leastMinutes);
  }
  const released = Math.max(0, ...problem.steps.map(({ earliestMinutes }) => earliestMinutes ?? 0));
  return longest.reduce((sum, minutes) => sum + minutes, released) + ovenTime(problem) + washTime(problem) + 1;
}

function ovenTime({ oven, steps }: WorkProblem): number {
  if (!oven) return 0;
  const temps = [oven.roomC, ...steps.flatMap((step) => (step.oven ? [step.oven.tempC] : []))];
  const [coldest, hottest] = [Math.min(...temps), Math.max(...temps)];
  const change = Math.max(ovenMinutes(oven, coldest, hottest), ovenMinutes(oven, hottest, coldest));
  return change * (temps.length - 1);
}

function washTime({ board, steps, kit, uses }: WorkProblem): number {
  const cuts = steps.filter((step) => step.board !== undefined).length;
  const kitMinutes = uses.map(({ kind }) => kit[kind]?.washMinutes ?? 0);
  return cuts * (board?.washMinutes ?? 0) + kitMinutes.reduce((sum, minutes) => sum + minutes, 0);
}

/** Minutes that no order of work can do without: the work of all hands, shared out. */
export function handsBound({ steps, cooks }: WorkProblem): number {
  return Math.ceil(steps.reduce((sum, { hands, minutes }) => sum + hands * minutes, 0) / (2 * cooks));
}
