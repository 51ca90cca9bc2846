import { FIGURES } from "../method/readNumbers.ts";
import { readTemperature } from "../method/readTemperature.ts";
import { readTimes } from "../method/readTimes.ts";
import { kindOfVerb } from "../method/workWords.ts";
import { withoutNumbering } from "./withoutNumbering.ts";

/** How much a line looks like one of the makings and like a piece of method; higher is more, around 0 is neither. */
export interface LineScores {
  readonly makings: number;
  readonly method: number;
}

/** What stands further on in a line doesn't change what it looks like. */
const MOST_SCORED = 1_000;

const BULLET = /^\s*[-–•*▪◦·☐□]\s*/;
const STARTS_WITH_AMOUNT = new RegExp(
  `^(?:about |approx\\.? |c\\.? ?)?(?:${FIGURES}|(?:an? )?(?:few|pinch|handful|knob|splash|dash|bunch|tin|can|small|large|medium|little)\\b|half an? |one |two |three |four |six )`,
  "iu",
);
const UNIT =
  /(?:\d|[¼½¾⅓⅔⅛]|\b(?:an?|one|two|three|few|heaped|level))\s*(?:x\s*)?(?:g|kg|mg|ml|cl|dl|l|oz|lbs?|pounds?|ounces?|grams?|litres?|liters?|pints?|quarts?|cups?|tsps?|tbsps?|teaspoons?|tablespoons?|spoons?|pinch(?:es)?|handfuls?|cloves?|tins?|cans?|packs?|packets?|bunch(?:es)?|sticks?|slices?|sprigs?|knobs?|dash(?:es)?|jars?|heads?|stalks?|inch|cm)\b/i;
const LOOSE_AMOUNT =
  /\b(?:to taste|pinch|handful|knob of|drizzle of|splash of|dash of|to serve|for (?:frying|greasing|garnish|dusting))\b/i;
const LEAD =
  /^(?:(?:meanwhile|then|next|now|finally|first|once|when|gently|carefully|while|in an?|to)\b[,\s]*(?:the |a |an )?)+/i;

/** The scores of one line. The weights are ours: what makings and methods of our own dishes look like, no source. */
export function scoreLine(line: string): LineScores {
  const bare = line.slice(0, MOST_SCORED).replace(BULLET, "").trim();
  const text = withoutNumbering(bare);
  const isNumbered = text !== bare;
  const words = text.match(/\p{L}[\p{L}'-]*/gu) ?? [];
  const hasAmount = STARTS_WITH_AMOUNT.test(text);
  const hasUnit = UNIT.test(text.slice(0, 60));
  const isOrder = [words[0], text.replace(LEAD, "").match(/\p{L}[\p{L}-]*/u)?.[0]].some(
    (word) => word !== undefined && kindOfVerb(word) !== undefined,
  );
  const isTimed = readTimes(text).length > 0 || readTemperature(text) !== undefined;
  const endsSentence = /[.!]["')]?$/.test(text);
  const hasHint = hasAmount || hasUnit || LOOSE_AMOUNT.test(text) || BULLET.test(line);
  const makings = sum([
    [hasAmount, 2.5],
    [hasUnit, 2],
    [LOOSE_AMOUNT.test(text), 2],
    [BULLET.test(line), 0.5],
    [hasHint && words.length <= 6, 0.5],
    [!hasHint, words.length <= 6 ? -0.5 : -2],
    [text.length > 120, -3],
    [endsSentence, -1.5],
    [isOrder && !hasAmount, -3],
    [isTimed && !hasAmount, -2],
    [isNumbered && words.length > 6, -2],
    [words.length === 0, -2],
  ]);
  const method = sum([
    [isOrder, 3],
    [endsSentence, 1],
    [text.length > 40, 1],
    [isNumbered, 1],
    [isTimed, 1.5],
    [hasAmount && !isOrder, -3],
    [words.length < 4 && !isOrder, -2],
  ]);
  return { makings, method };
}

function sum(points: readonly (readonly [boolean, number])[]): number {
  return points.reduce((total, [holds, weight]) => total + (holds ? weight : 0), 0);
}
