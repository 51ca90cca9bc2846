import type { Project } from "halfloaf/work";

/**
 * Reads a project file of the two common test-set formats, told apart by the ending of the name.
 *
 * `.sm`: sections with headings; job 1 is the start, the last the end; a lag is the length of the earlier job.
 * `.sch`: jobs with start-to-start lags in square brackets, then jobs with lengths and demands, then capacities.
 * **Source**: Kolisch, Sprecher 1996, "PSPLIB - a project scheduling problem library", EJOR 96, 205-216.
 */
export function readProject(name: string, text: string): Project {
  return /\.sm$/i.test(name) ? readPlain(text) : readWithLags(text);
}

function readPlain(text: string): Project {
  const lines = text.split(/\r?\n/);
  const rowsAfter = (heading: string, skip: number): number[][] => {
    const from = lines.findIndex((line) => line.startsWith(heading)) + skip;
    const rows: number[][] = [];
    for (let k = from; /^\s*\d/.test(lines[k] ?? ""); k++) rows.push(numbersIn(lines[k] as string));
    return rows;
  };
  const jobs = rowsAfter("REQUESTS/DURATIONS", 3);
  const minutes = jobs.map((row) => row[2] as number);
  const lags = rowsAfter("PRECEDENCE RELATIONS", 2).flatMap(([job, , , ...successors]) =>
    successors.map((successor) => {
      const from = (job as number) - 1;
      return { from, to: successor - 1, lag: minutes[from] as number };
    }),
  );
  const capacities = rowsAfter("RESOURCEAVAILABILITIES", 2)[0] ?? [];
  return {
    minutes,
    lags,
    resources: capacities.map((capacity, r) => ({ capacity, demands: jobs.map((row) => row[3 + r] as number) })),
  };
}

function readWithLags(text: string): Project {
  const rows = text.trim().split(/\r?\n/).map(numbersIn);
  const [inner, kinds] = rows[0] as [number, number];
  const count = inner + 2;
  const lags = rows.slice(1, count + 1).flatMap(([job, , successors, ...rest]) =>
    Array.from({ length: successors as number }, (_, k) => ({
      from: job as number,
      to: rest[k] as number,
      lag: rest[(successors as number) + k] as number,
    })),
  );
  const jobs = rows.slice(count + 1, 2 * count + 1);
  const capacities = (rows[2 * count + 1] as number[]).slice(0, kinds);
  const demandsOf = (r: number) => jobs.map((row) => row[3 + r] as number);
  return {
    minutes: jobs.map((row) => row[2] as number),
    lags,
    resources: capacities.map((capacity, r) => ({ capacity, demands: demandsOf(r) })),
  };
}

function numbersIn(line: string): number[] {
  return (line.match(/-?\d+/g) ?? []).map(Number);
}
