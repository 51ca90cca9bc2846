import type { CoreKind, CoreRule } from "./coreTemperature.ts";

/** Short texts of the cautions that have no figure. */
export const PLAIN_TEXTS = {
  "label-first": "The label on the pack, local rules and a doctor or dietitian come first.",
  "raw-apart":
    "Keep raw meat, fish and egg apart: own board and knife, or last on the board; then wash hands and all it touched.",
  "no-rinse": "Do not rinse raw poultry: it spreads germs.",
  "wash-soil": "Wash the soil off under running water before cutting.",
  "raw-flour": "Do not taste raw dough or batter.",
  sprouts: "Cook sprouted beans until steaming unless the label says ready to eat.",
  "frozen-produce": "Cook frozen fruit and vegetables through unless the label says ready to eat.",
  "liver-pregnancy": "No liver in pregnancy: it holds very much retinol.",
  "honey-infants": "No honey for a child under one year.",
  "egg-soft":
    "Egg left soft is not for pregnancy, small children, the old or the ill, unless label and local rules allow it.",
} as const;

const KINDS: Readonly<Record<CoreKind, string>> = {
  poultry: "Poultry",
  "minced-meat": "Minced meat, sausages and offal",
  "whole-meat": "Cuts of meat",
  fish: "Fish",
  egg: "Egg until firm, and what it is mixed into",
  leftover: "Leftovers, steaming right through",
  "cooked-ham": "Cooked ham",
};

/** "Poultry: 73.9 °C in the middle, held for 37 s." */
export function tellCore({ kind, tempC, holdMinutes, restMinutes }: CoreRule): string {
  const hold = holdMinutes > 0 ? `, held for ${tellTime(holdMinutes)}` : "";
  const rest = restMinutes > 0 ? `, then a rest of ${tellTime(restMinutes)}` : "";
  return `${KINDS[kind]}: ${tempC} °C in the middle${hold}${rest}.`;
}

/** A time of holding in words; seconds are rounded up, so that the text never asks for less than the rule. */
export function tellTime(minutes: number): string {
  const seconds = Math.ceil(minutes * 60 - 1e-6);
  if (seconds < 60) return `${seconds} s`;
  const whole = Math.floor(seconds / 60);
  const rest = seconds % 60 === 0 ? "" : ` ${seconds % 60} s`;
  return whole % 60 === 0 && rest === "" ? `${whole / 60} h` : `${whole} min${rest}`;
}
