import { tellCount, tellMass, tellNumber } from "@halfloaf/words/en";
import { harmless } from "../../output/harmless.ts";
import { layFaults } from "../../output/layFaults.ts";
import { wrap, wrapBehind } from "../../output/layout.ts";
import type { Page } from "../../output/Page.ts";
import { tellField, tellMisfit, tellReason } from "../../words/readWords.ts";
import { type BesideRow, layBeside } from "../layBeside.ts";
import type { Doubt, PartOf, ReadDish, ReadMaking, ReadStep } from "../ReadReport.ts";

const FORMS = { "json-ld": "JSON-LD", microdata: "microdata", rdfa: "RDFa", text: "its visible text" } as const;
/** Doubts that say only that nothing was said; they stand in the list of reasons alone. */
const UNSAID: ReadonlySet<string> = new Set(["optional-unsaid", "ahead-unsaid"]);
const TITLES = ["as written", "understood as"] as const;

/** The dishes of a file as a page. */
export function layDishes({ kind, file, form, dishes, issues }: PartOf<"dish" | "page">, page: Page): string[] {
  const count = dishes.length === 1 ? "" : `: ${tellCount(dishes.length, "dish", "dishes")}`;
  return [
    ...wrap(
      `${harmless(file)}, ${kind === "dish" ? "read as a pasted dish" : `read from ${FORMS[form]}`}${count}`,
      page.width,
    ),
    ...issues.flatMap((issue) => wrapBehind("  not sound: ", tellMisfit(issue), page.width)),
    ...dishes.flatMap((dish) => ["", ...layDish(dish, page)]),
  ];
}

/** Lines of makings alone as a page. */
export function layMakingsOnly({ file, makings }: PartOf<"makings">, page: Page): string[] {
  const doubts = makings.flatMap((making) => making.doubts);
  return [
    ...wrap(`${harmless(file)}, read as lines of makings`, page.width),
    "",
    ...layBeside(makings.map(toMakingRow), page, TITLES),
    ...layReasons(doubts, page),
  ];
}

function layDish(dish: ReadDish, page: Page): string[] {
  const { width, paint } = page;
  const doubts = [
    ...dish.doubts,
    ...dish.makings.flatMap(({ leftOut, doubts }) => (leftOut ? [] : doubts)),
    ...dish.steps.flatMap(({ doubts }) => doubts),
  ];
  return [
    ...wrap(harmless(dish.title ?? "(no title)"), width).map(paint.strong),
    ...layWhole(dish, page),
    "",
    paint.heading("MAKINGS"),
    ...layBeside(dish.makings.map(toMakingRow), page, TITLES),
    "",
    paint.heading("METHOD"),
    ...layBeside(dish.steps.map(toStepRow), page, TITLES),
    ...layUnread(dish, page),
    ...layReasons(doubts, page),
    ...(dish.open.length === 0
      ? ["", paint.good("Nothing is open: it can be kept. Look at the guesses first.")]
      : [
          "",
          paint.heading("OPEN"),
          ...layFaults(
            dish.open.map((fault) => ({ ...fault, path: [] })),
            page,
          ),
        ]),
  ];
}

function layWhole(dish: ReadDish, { width, paint }: Page): string[] {
  const values: readonly (readonly [field: string, value: string | undefined])[] = [
    ["portions", dish.portions === undefined ? "not told" : String(dish.portions)],
    ["portionMassG", dish.portionMassG === undefined ? undefined : tellMass(dish.portionMassG)],
    ["main", dish.main?.name],
    ["statedMinutes", dish.statedMinutes === undefined ? undefined : String(dish.statedMinutes)],
    ["manner", dish.manner],
    ["fits", dish.fits.join(", ")],
    ["cooking", dish.cooking],
  ];
  const shown = new Set(values.map(([field]) => field));
  const rest = dish.doubts.filter(({ field }) => !shown.has(field));
  return [
    ...values.flatMap(([field, value]) => {
      if (value === undefined) return [];
      const doubt = dish.doubts.find((each) => each.field === field);
      const lines = wrapBehind(
        `  ${tellField(field)}: `,
        `${harmless(value)}${doubt === undefined ? "" : ` (${tellDoubt(doubt)})`}`,
        width,
      );
      return doubt?.sure === "guess" ? lines.map(paint.warning) : lines;
    }),
    ...rest.flatMap((doubt) => wrapBehind(`  ${tellField(doubt.field)}: `, tellDoubt(doubt), width).map(paint.warning)),
  ];
}

function tellDoubt({ sure, reason }: Doubt): string {
  return `${sure}: ${tellReason(reason)}`;
}

function toMakingRow(making: ReadMaking): BesideRow {
  const { number, text, heading, food, name, offers, cut, optional, alternatives, unread } = making;
  if (making.leftOut) return { lead: `${number}`, left: harmless(text), right: [{ text: "left out of the dish" }] };
  const details = [
    tellAmount(making),
    ...(cut === undefined ? [] : [cut]),
    ...(optional ? ["if wanted"] : []),
    ...(alternatives.length === 0 ? [] : [`or ${alternatives.map((each) => each.name).join(" or ")}`]),
  ];
  const what = food === undefined ? `which food? ${quoteName(name)}` : food.name;
  const near =
    food === undefined
      ? [offers.length === 0 ? "nothing near in the table" : `nearest: ${offers.map(({ id }) => id).join(", ")}`]
      : [];
  return {
    lead: `${number}`,
    left: harmless(heading === undefined ? text : `${text} [${heading}]`),
    right: [
      { text: harmless(`${what}, ${details.join(", ")}`), isDoubt: food === undefined },
      ...near.map((each) => ({ text: harmless(each), isDoubt: true })),
      ...toDoubtLines(making.doubts),
      ...(unread.length === 0 ? [] : [{ text: harmless(`not read: ${unread.join("; ")}`) }]),
    ],
  };
}

function quoteName(name: string): string {
  return `"${name}"`;
}

function tellAmount({ amount, as }: ReadMaking): string {
  if (amount === undefined) return "how much?";
  if (amount === "to-taste") return "to taste";
  const number = "from" in amount ? `${tellNumber(amount.from)} to ${tellNumber(amount.to)}` : tellNumber(amount.value);
  const isOne = "value" in amount && amount.value === 1;
  const size = "size" in amount && amount.size !== undefined ? ` (${amount.size})` : "";
  const unit = amount.unit === "piece" ? `${isOne ? "piece" : "pieces"}${size}` : tellUnit(amount.unit, isOne);
  return `${number} ${unit}${as === undefined ? "" : " as bought"}`;
}

/** The unit as people write it. */
function tellUnit(code: string, isOne: boolean): string {
  const unit = UNITS[code] ?? code.replace(/[[\]]/g, "");
  return isOne ? unit.replace(/s(?= \(|$)/, "") : unit;
}

const UNITS: Readonly<Record<string, string>> = {
  "[tbs_m]": "tbsp (15 mL)",
  "[tsp_m]": "tsp (5 mL)",
  "[cup_m]": "cups (250 mL)",
  "[cup_us]": "US cups",
  "[tbs_us]": "US tbsp",
  "[tsp_us]": "US tsp",
  "[oz_av]": "oz",
  "[lb_av]": "lb",
  "[foz_br]": "UK fl oz",
  "[foz_us]": "US fl oz",
  "[pt_br]": "UK pints",
  "[pt_us]": "US pints",
};

function toStepRow(step: ReadStep, at: number): BesideRow {
  const { text, kind, minutes, hands, kit, tempC, after, ahead } = step;
  const time = `${tellNumber(minutes.fixed)} min${minutes.perPortion === 0 ? "" : ` and ${tellNumber(minutes.perPortion)} min a portion`}`;
  const how = { full: "both hands", eye: "an eye on it", none: "waits" }[hands];
  const parts = [
    kind,
    time,
    how,
    ...kit,
    ...(tempC === undefined ? [] : [`${tellNumber(tempC)} °C`]),
    ...(ahead ? ["hours before"] : []),
  ];
  return {
    lead: `${at + 1}`,
    left: harmless(text),
    right: [
      {
        text: harmless(
          `${step.id === kind ? "" : `${step.id}: `}${parts.join(", ")}${after.length === 0 ? "" : `; after ${after.join(", ")}`}`,
        ),
      },
      ...toDoubtLines(step.doubts),
    ],
  };
}

/** Each guess with why; what is likely by its fields alone, since its reasons stand below. */
function toDoubtLines(doubts: readonly Doubt[]): BesideRow["right"] {
  const guesses = doubts.filter(({ sure }) => sure === "guess");
  const likely = doubts.filter(({ sure, reason }) => sure === "likely" && !UNSAID.has(reason));
  return [
    ...guesses.map(({ field, reason }) => ({
      text: `guess, ${tellField(field)}: ${tellReason(reason)}`,
      isDoubt: true,
    })),
    ...(likely.length === 0 ? [] : [{ text: `likely: ${likely.map(({ field }) => tellField(field)).join(", ")}` }]),
  ];
}

function layUnread({ unread, issues }: ReadDish, { width, paint }: Page): string[] {
  if (unread.length + issues.length === 0) return [];
  return [
    "",
    paint.heading("NOT READ"),
    ...unread.flatMap((text) => wrapBehind("  ", harmless(text), width)),
    ...issues.flatMap((issue) => wrapBehind("  not sound: ", tellMisfit(issue), width)),
  ];
}

/** Why something is likely, each reason once. */
function layReasons(doubts: readonly Doubt[], { width, paint }: Page): string[] {
  const likely = doubts.filter(({ sure }) => sure === "likely");
  const lines = [...new Set(likely.map(({ field, reason }) => `${tellField(field)}: ${tellReason(reason)}`))];
  if (lines.length === 0) return [];
  return ["", paint.quiet("LIKELY, BECAUSE"), ...lines.flatMap((line) => wrapBehind("  ", line, width))];
}
