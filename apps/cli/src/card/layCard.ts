import { CLOSING, tellCount, tellMass, tellMinutes, tellMoney } from "@halfloaf/words/en";
import { EU_ALLERGEN_NAMES, US_ALLERGEN_NAMES } from "halfloaf/safety";
import { harmless } from "../output/harmless.ts";
import { keepTogether, layTable, wrap, wrapBehind } from "../output/layout.ts";
import type { CardData } from "./CardData.ts";
import type { CardPage } from "./CardPage.ts";
import { layCardIntake } from "./layCardIntake.ts";
import { layCardSources } from "./layCardSources.ts";

/** A costing card as lines: cost lines, plate cost, minutes, intake, allergens, diet, keeping, cautions. */
export function layCard(page: CardPage): string[] {
  const parts = [
    layTitle,
    layCosts,
    layWork,
    layCardIntake,
    layCardSources,
    layAllergens,
    layDiet,
    layKeeping,
    layCardCautions,
    layClosing,
  ];
  const laid = parts.map((part) => part(page)).filter((lines) => lines.length > 0);
  return laid.flatMap((lines, at) => (at === 0 ? lines : ["", ...lines]));
}

function layTitle({ card, width, paint }: CardPage): string[] {
  const { portions, portionMassG, missingKit } = card;
  const where = `${tellCount(portions, "portion")} of ${tellMass(portionMassG)} cooked, priced for ${harmless(card.kitchen)}. Money in ${card.currency}.`;
  const lacking =
    missingKit === undefined
      ? []
      : wrap(`This kitchen can't cook it: its kit has no ${missingKit}, or not enough of them.`, width);
  return [...wrap(harmless(card.title), width).map(paint.strong), ...wrap(where, width), ...lacking.map(paint.warning)];
}

function layCosts(page: CardPage): string[] {
  const { card, width, paint } = page;
  const money = (minor: number) => tellMoney(minor, card.currency);
  const rows = card.makings.map(({ name, cut, purchasedG, refuseG, edibleG, costMinor, estimate, insteadOf }) => [
    `${harmless(name)}${cut === undefined ? "" : `, ${harmless(cut)}`}${insteadOf === undefined ? "" : ` (instead of ${harmless(insteadOf.name)})`}${estimate ? " (estimate)" : ""}`,
    tellMass(purchasedG.middle),
    refuseG < 0.05 ? "" : tellMass(refuseG),
    tellMass(edibleG.middle),
    costMinor === undefined ? "unknown" : money(costMinor),
  ]);
  const columns = [
    { title: "makings", wraps: true },
    { title: "as bought", right: true },
    { title: "refuse", right: true },
    { title: "eaten", right: true },
    { title: "cost", right: true },
  ];
  const atLeast = card.atLeast ? "at least " : "";
  rows.push(["", "", "", "", ""]);
  rows.push([`All ${tellCount(card.portions, "portion")}`, "", "", "", `${atLeast}${money(card.totalMinor)}`]);
  rows.push(["Plate cost of one portion", "", "", "", `${atLeast}${tellPlates(card, money)}`]);
  return [paint.heading("COST"), "", ...layTable(columns, rows, width, 2), ...layCostNotes(page)];
}

/** The cost of a plate; where the total does not split evenly, that of the dearest and the cheapest. */
function tellPlates({ platesMinor }: CardData, money: (minor: number) => string): string {
  const [dearest = 0, cheapest = 0] = [platesMinor[0], platesMinor.at(-1)];
  return dearest === cheapest ? money(dearest) : `${money(cheapest)} to ${money(dearest)}`;
}

function layCostNotes({ card, width }: CardPage): string[] {
  const unpriced = card.makings.filter(({ costMinor }) => costMinor === undefined).map(({ name }) => harmless(name));
  const notes = [
    ...(unpriced.length > 0 ? [`No price is known of ${unpriced.join(", ")}.`] : []),
    ...(card.unknown.length > 0
      ? [`In no sum, as the amount is to taste or not known: ${listNames(card.unknown)}.`]
      : []),
    ...(card.alternatives !== undefined ? [`A plan may take instead: ${listAlternatives(card.alternatives)}.`] : []),
    ...(card.optional.length > 0 ? [`If wanted, and in no sum: ${listNames(card.optional)}.`] : []),
    ...(card.estimate ? ["estimate: a price that was guessed, not seen."] : []),
  ];
  return notes.flatMap((note) => wrapBehind("  ", note, width));
}

function listNames(foods: readonly { readonly name: string }[]): string {
  return foods.map(({ name }) => harmless(name)).join(", ");
}

/** What may stand in for what, as "dill or mint for parsley; ...". */
function listAlternatives(alternatives: NonNullable<CardData["alternatives"]>): string {
  const stated = [...new Set(alternatives.map(({ insteadOf }) => insteadOf.name))];
  const others = (name: string): string[] =>
    alternatives.filter(({ insteadOf }) => insteadOf.name === name).map((food) => harmless(food.name));
  return stated.map((name) => `${others(name).join(" or ")} for ${harmless(name)}`).join("; ");
}

function layWork({ card, width, paint }: CardPage): string[] {
  const { handsOn, elapsed, ahead } = card.minutes;
  const vessels = card.vessels.map(({ vessel, count }) => keepTogether(tellCount(count, vessel)));
  const lines = [
    `${tellMinutes(handsOn)} hands-on; ready ${tellMinutes(elapsed)} after the first step${ahead > 0 ? `; ${tellMinutes(ahead)} ahead of that` : ""}.`,
    `To wash up: ${vessels.length === 0 ? "nothing but the plates" : vessels.join(", ")}.`,
  ];
  return [paint.heading("WORK"), "", ...lines.flatMap((line) => wrapBehind("  ", line, width))];
}

function layAllergens({ card, width, paint }: CardPage): string[] {
  const eu = (list: readonly (keyof typeof EU_ALLERGEN_NAMES)[]) => list.map((id) => EU_ALLERGEN_NAMES[id].name);
  const us = (list: readonly (keyof typeof US_ALLERGEN_NAMES)[]) => list.map((id) => US_ALLERGEN_NAMES[id].name);
  const law = (name: string, sure: readonly string[], possible: readonly string[]): string[] => {
    const contains =
      sure.length === 0 ? "none of the list in the makings" : sure.map((each) => each.toUpperCase()).join(", ");
    const rest =
      possible.length === 0
        ? ""
        : `; only with what is optional or stands in: ${possible.map((each) => each.toUpperCase()).join(", ")}`;
    return wrapBehind("  ", `${name}: ${contains}${rest}.`, width).map(sure.length > 0 ? paint.strong : (line) => line);
  };
  const { allergens } = card;
  return [
    paint.heading("ALLERGENS"),
    "",
    ...law("EU and UK list of 14", eu(allergens.eu.sure), eu(allergens.eu.possible)),
    ...law("US list of 9", us(allergens.us.sure), us(allergens.us.possible)),
    ...wrapBehind("  ", "Traces are not known here: read the label on each pack.", width),
  ];
}

function layDiet({ card, width, paint }: CardPage): string[] {
  const { asCosted, reachable } = card.diet;
  const words = { vegan: "vegan", vegetarian: "vegetarian", fish: "holds fish", meat: "holds meat" } as const;
  const other =
    asCosted === reachable
      ? ""
      : `; with other alternatives ${reachable === "fish" ? "without meat" : words[reachable]}`;
  const notFor = card.notFor.map(({ name, foods }) => `Not for ${harmless(name)}: ${listNames(foods)}.`);
  const lines = [`As costed ${words[asCosted]}${other}.`, ...notFor];
  return [paint.heading("DIET"), "", ...lines.flatMap((line) => wrapBehind("  ", line, width))];
}

function layKeeping({ card, width, paint }: CardPage): string[] {
  const { fridgeDays, freezerDays, authority } = card.keeps;
  const fridge =
    fridgeDays === 0 ? "Eaten on the day it is cooked" : `Keeps ${tellCount(fridgeDays, "day")} in the fridge`;
  const freezer = freezerDays === undefined ? "not for the freezer" : `${tellCount(freezerDays, "day")} in the freezer`;
  const lines = [
    `${fridge}, ${freezer} (${harmless(authority)}).`,
    `Served ${card.served.join(" or ")}; ${card.travels ? "can be taken along" : "not to be taken along"}.`,
  ];
  return [paint.heading("KEEPING"), "", ...lines.flatMap((line) => wrapBehind("  ", line, width))];
}

function layCardCautions({ card, width, paint }: CardPage): string[] {
  const told = card.cautions.flatMap(({ text, authority }) =>
    wrapBehind("  - ", `${harmless(text)} [${harmless(authority)}]`, width),
  );
  return told.length === 0 ? [] : [paint.heading("CAUTIONS"), "", ...told];
}

function layClosing({ width }: CardPage): string[] {
  return wrap(CLOSING, width);
}
