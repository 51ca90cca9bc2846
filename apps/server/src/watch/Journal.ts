import { pino } from "pino";

/** Where a server writes down what happens, a line of JSON each: never a secret, never the content of a row. */
export interface Journal {
  info(facts: Readonly<Record<string, unknown>>, event: string): void;
  warn(facts: Readonly<Record<string, unknown>>, event: string): void;
  error(facts: Readonly<Record<string, unknown>>, event: string): void;
}

/** A journal to the standard output, or to what takes its lines; each line tells its time in UTC. */
export function openJournal(level: string, lines?: { write(line: string): void }): Journal {
  const options = { level, base: null, timestamp: pino.stdTimeFunctions.isoTime };
  return lines === undefined ? pino(options) : pino(options, lines);
}
