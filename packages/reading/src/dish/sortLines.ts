import { scoreLine } from "./scoreLine.ts";

/** A line with the part of a dish's text that it belongs to. */
export interface SortedLine {
  readonly text: string;
  /** Counted from 1, without empty lines. */
  readonly line: number;
  readonly part: "makings" | "method" | "about" | "other";
  readonly isHeading: boolean;
  /** True for a heading that only names the part ("Method"). */
  readonly isKeyword: boolean;
}

/** Most lines that are sorted; those beyond are dropped, since no dish is told in as many. */
const MOST_LINES = 3_000;
const LONGEST_HEADING = 60;

const ABOUT =
  /^(?:serves|servings?|portions?|makes|yields?|feeds|prep(?:aration)?(?: time)?|cook(?:ing)?(?: time)?|total(?: time)?|ready in|takes|time)\b.{0,60}$|^(?:for )?\d+(?:\s*(?:-|–|to)\s*\d+)? (?:servings|portions|people)\b.{0,40}$/i;
/** "For 1" on a line of its own, or before other short remarks: so many are meant to eat it. */
export const FOR_SO_MANY =
  /^for (?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?:\s*(?:-|–|to|or)\s*\d{1,3})?\s*(?:[.:]?\s*$|[|;•·].{0,40}$)/i;
const KEYWORDS: readonly (readonly [State, RegExp])[] = [
  [
    "makings",
    /^(?:the )?(?:ingredients?|makings|you(?:'ll| will)? need|what you need|shopping list)(?: list)?\b.{0,25}$/i,
  ],
  [
    "method",
    /^(?:the )?(?:method|directions?|instructions?|preparation|steps|how to (?:make|cook|do)(?: it)?|what to do)\b.{0,15}$/i,
  ],
  [
    "after",
    /^(?:the )?(?:notes?|tips?|nutrition(?:al)?(?: facts| information)?|storage|storing|comments?|reviews?|related|you may also|more|share|tags|sources?)\b.{0,25}$/i,
  ],
];

const STATES = ["before", "makings", "method", "after"] as const;
type State = (typeof STATES)[number];

/** What it costs to go from one part to another; the usual way is down the list once. The weights are ours, no source. */
const STEP_COSTS: Readonly<Record<State, Readonly<Record<State, number>>>> = {
  before: { before: 0, makings: 1, method: 4, after: 9 },
  makings: { before: 99, makings: 0, method: 1, after: 5 },
  method: { before: 99, makings: 4, method: 0, after: 3 },
  after: { before: 99, makings: 6, method: 6, after: 0 },
};
/** What a heading that names a part is worth for that part and against any other. */
const KEYWORD_WORTH = 6;
/** What it costs that a part is named while it is under way already. */
const AGAIN_COST = 3;

/**
 * Each line that is not empty with its part: the likeliest course of parts down the lines, after what each looks like by itself.
 * **Source**: Viterbi 1967, IEEE Trans. Inf. Theory 13, 260-269.
 */
export function sortLines(lines: readonly string[]): SortedLine[] {
  const texts = lines
    .map((text) => text.trim())
    .filter((text) => text !== "")
    .slice(0, MOST_LINES);
  const keywords = texts.map(keywordOf);
  const isAbout = texts.map((text, at) => keywords[at] === undefined && (ABOUT.test(text) || FOR_SO_MANY.test(text)));
  const course = findCourse(
    texts.map((text, at) => ({ worth: isAbout[at] ? EVEN : worthOf(text, keywords[at]), keyword: keywords[at] })),
  );
  return texts.map((text, at): SortedLine => {
    const state = course[at] as State;
    const isKeyword = keywords[at] !== undefined;
    const part = isAbout[at] ? "about" : state === "makings" || state === "method" ? state : "other";
    return { text, line: at + 1, part, isHeading: isKeyword || isHeading(text), isKeyword };
  });
}

function keywordOf(text: string): State | undefined {
  if (text.length > LONGEST_HEADING) return undefined;
  const bare = text.replace(/[\s:.#*=_-]+$/, "").replace(/^[\s#*=_-]+/, "");
  return KEYWORDS.find(([, pattern]) => pattern.test(bare))?.[0];
}

function isHeading(text: string): boolean {
  if (/[.!?,]$/.test(text) || text.length > LONGEST_HEADING) return false;
  if (/^to (?:serve|finish|garnish|decorate)(?: \([^()]*\))?$/i.test(text)) return true;
  return text.endsWith(":") || (/^for the \p{L}/iu.test(text) && !/\d/.test(text));
}

type Worth = Readonly<Record<State, number>>;
const EVEN: Worth = { before: 0, makings: 0, method: 0, after: 0 };

function worthOf(text: string, keyword: State | undefined): Worth {
  if (keyword !== undefined) return { ...EVEN, [keyword]: KEYWORD_WORTH };
  if (isHeading(text)) return { before: -1, makings: 0, method: 0, after: -1 };
  const { makings, method } = scoreLine(text);
  return { before: 0, makings, method, after: 0 };
}

/** What it costs to go from one part to another over a line; a heading names a part where it begins, not within it. */
function stepCost(from: State, to: State, keyword: State | undefined): number {
  return STEP_COSTS[from][to] + (from === to && to === keyword ? AGAIN_COST : 0);
}

function findCourse(lines: readonly { readonly worth: Worth; readonly keyword: State | undefined }[]): State[] {
  let best: Record<State, number> = { before: 0, makings: -1, method: -4, after: -99 };
  const back: Record<State, State>[] = [];
  for (const { worth, keyword } of lines) {
    const from = {} as Record<State, State>;
    const next = {} as Record<State, number>;
    for (const to of STATES) {
      const [first, ...others] = STATES;
      const reach = (state: State) => best[state] - stepCost(state, to, keyword);
      from[to] = others.reduce<State>((chosen, state) => (reach(state) > reach(chosen) ? state : chosen), first);
      next[to] = reach(from[to]) + worth[to];
    }
    back.push(from);
    best = next;
  }
  let state = STATES.reduce<State>((chosen, each) => (best[each] > best[chosen] ? each : chosen), "before");
  const course: State[] = [];
  for (const from of back.reverse()) {
    course.push(state);
    state = from[state];
  }
  return course.reverse();
}
