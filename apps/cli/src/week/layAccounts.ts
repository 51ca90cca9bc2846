import { tellCount, tellDay, tellMinutes, tellNumber } from "@halfloaf/words/en";
import { layTable, wrap } from "../output/layout.ts";
import { headingOf, moneyOf, type WeekPage } from "./WeekPage.ts";

/** The accounts: what was there and what was paid equals plates, waste and what is carried over. */
export function layAccounts(page: WeekPage): string[] {
  const { accounts, besides } = page.plan;
  const opening = besides === undefined ? "Stores at the start" : "Stores at the start, and what came besides";
  const money = (minor: number) => moneyOf(page, minor);
  const rows = [
    ["", opening, money(accounts.openingMinor), ""],
    ["+", "Paid at the tills", money(accounts.tillMinor), money(accounts.openingMinor + accounts.tillMinor)],
    ["=", "On the plates", money(accounts.platesMinor), ""],
    ["+", "Thrown away", money(accounts.wasteMinor), ""],
    [
      "+",
      "Carried over",
      money(accounts.carryOverMinor),
      money(accounts.platesMinor + accounts.wasteMinor + accounts.carryOverMinor),
    ],
  ];
  const columns = [{ title: "" }, { title: "", wraps: true }, { title: "", right: true }, { title: "", right: true }];
  return [
    headingOf(page, "Accounts"),
    "",
    ...layTable(columns, rows, page.width, 2),
    "",
    ...tellRest(page).flatMap((sentence) => wrap(sentence, page.width)),
  ];
}

function tellRest(page: WeekPage): string[] {
  const { accounts, days } = page.plan;
  const { budgetMinor, tillMinor, faresMinor, estimatedMinor, handsOnMinutes, washUp } = accounts;
  const paid = tillMinor + faresMinor;
  const fares = faresMinor > 0 ? ` (tills ${moneyOf(page, tillMinor)}, fares ${moneyOf(page, faresMinor)})` : "";
  const left = budgetMinor === undefined ? [] : [tellBudget(page, budgetMinor, paid, fares)];
  const besidesMinor = (page.plan.besides ?? []).reduce((sum, { paidMinor }) => sum + paidMinor, 0);
  return [
    ...(budgetMinor === undefined && faresMinor > 0 ? [`Money paid: ${moneyOf(page, paid)}${fares}.`] : []),
    ...left,
    ...(besidesMinor > 0
      ? [
          `Paid besides the buying list: ${moneyOf(page, besidesMinor)}; as far as the plan left it, the budget is less by that.`,
        ]
      : []),
    ...(estimatedMinor > 0 ? [`Estimated prices make up ${moneyOf(page, estimatedMinor)} of the tills.`] : []),
    ...tellRisen(page),
    ...(page.plan.boxes ?? []).map(
      ({ dish, portions, on, keepsUntil, costMinor }) =>
        `Put by on ${tellDay(on)}, carried over: ${tellNumber(portions)} portions of ${page.names.dish(dish)} for ${moneyOf(page, costMinor)}, good in the freezer until ${keepsUntil}.`,
    ),
    `Hands-on cooking: ${tellMinutes(handsOnMinutes)} in ${tellCount(days, "day")}${tellServing(page)}.`,
    ...(washUp === undefined ? [] : [tellWashUp(washUp)]),
  ];
}

/** What the days' minutes hold besides cooking. */
function tellServing({ plan }: WeekPage): string {
  const minutes = plan.sittings.reduce((sum, { leftover, handsOnMinutes }) => sum + (leftover ? handsOnMinutes : 0), 0);
  return minutes > 0 ? `, and ${tellMinutes(minutes)} to serve what is left over` : "";
}

function tellWashUp({ vessels, minutes }: NonNullable<WeekPage["plan"]["accounts"]["washUp"]>): string {
  return `To wash up, beside the plates: ${tellCount(vessels, "vessel")}, ${tellMinutes(minutes)}.`;
}

function tellBudget(page: WeekPage, budgetMinor: number, paid: number, fares: string): string {
  const rest = budgetMinor - paid;
  const verdict = rest >= 0 ? `${moneyOf(page, rest)} left` : `${moneyOf(page, -rest)} too much`;
  return `Budget ${moneyOf(page, budgetMinor)}, paid ${moneyOf(page, paid)}${fares}: ${verdict}.`;
}

function tellRisen(page: WeekPage): string[] {
  const { risen, faresMinor, budgetMinor } = page.plan.accounts;
  if (risen === undefined) return [];
  const paid = risen.tillMinor + faresMinor;
  const rest = budgetMinor === undefined ? "" : `, ${moneyOf(page, budgetMinor - paid)} within the budget`;
  return [`If estimated prices rise by ${risen.pct} %: ${moneyOf(page, paid)} to be paid${rest}.`];
}
