import { LEAST_WIDTH, MOST_WIDTH } from "./layout.ts";
import type { Page } from "./Page.ts";
import { choosePaint, type Paint } from "./paint.ts";

/** Everything a command reaches the outside by, so that it can be run without a process of its own. */
export interface Terminal {
  /** Folder that file names are taken from. */
  readonly cwd: string;
  /** Variables of the environment. */
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Milliseconds since 1970-01-01 UTC by the clock. */
  readonly nowMs: () => number;
  /** The page that results are laid out for. */
  readonly page: Page;
  /** How talk is coloured. */
  readonly talkPaint: Paint;
  /** Results, a line break is added. */
  readonly print: (text: string) => void;
  /** Talk about what is going on, a line break is added. */
  readonly talk: (text: string) => void;
  /** A line of talk that the next one takes the place of; an empty one only clears it. Nothing where nobody looks on. */
  readonly showProgress: (text: string) => void;
  /** Calls the listener when a person asks to stop; gives back what takes the listener off. */
  readonly onStop: (listener: () => void) => () => void;
  /** Lets what came in meanwhile, such as the wish to stop, be heard. */
  readonly pause: () => Promise<void>;
}

const USUAL_WIDTH = 80;
const ERASE_LINE = "\r\u001b[K";

/** The terminal of a process. */
export function toTerminal(process: NodeJS.Process): Terminal {
  const { stdout, stderr, env } = process;
  return {
    cwd: process.cwd(),
    env,
    nowMs: () => Date.now(),
    page: {
      width: chooseWidth(stdout.isTTY ? stdout.columns : Number(env.COLUMNS)),
      paint: choosePaint(stdout.isTTY === true, env),
    },
    talkPaint: choosePaint(stderr.isTTY === true, env),
    print: (text) => void stdout.write(`${text}\n`),
    talk: (text) => void stderr.write(`${text}\n`),
    showProgress: (text) => {
      if (stderr.isTTY)
        stderr.write(`${ERASE_LINE}${text.slice(0, Math.max(20, (stderr.columns ?? USUAL_WIDTH) - 1))}`);
    },
    onStop: (listener) => {
      process.once("SIGINT", listener);
      return () => void process.off("SIGINT", listener);
    },
    pause: () => new Promise((resolve) => setImmediate(resolve)),
  };
}

/** The width to lay pages out for: that of the screen within bounds, 80 where it is not known. */
export function chooseWidth(columns: number | undefined): number {
  if (columns === undefined || !Number.isSafeInteger(columns) || columns <= 0) return USUAL_WIDTH;
  return Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, columns));
}
