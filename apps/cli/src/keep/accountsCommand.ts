import {
  accountsBy,
  budgetOf,
  cookingsBy,
  type EnergyDrawn,
  energyBetween,
  platesBy,
  type Stretch,
  startOf,
  wasteBy,
  wasteByReason,
} from "halfloaf/kitchen/record";
import type { CivilDate } from "halfloaf/quantity";
import * as v from "valibot";
import type { ExitCode } from "../exitCodes.ts";
import { findPrice } from "../input/findPrice.ts";
import type { Terminal } from "../output/Terminal.ts";
import { tellDaysTurned } from "../words/keepFaultWords.ts";
import { AccountsReport } from "./AccountsReport.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import { layAccounts } from "./layAccounts.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { toKeepNames } from "./toKeepNames.ts";

/** Which accounts are asked for. */
export interface AccountsAsk extends KeepAsk {
  readonly each: Stretch;
  readonly from?: CivilDate;
  readonly to?: CivilDate;
  /** Price of a kWh; absent: that of the kitchen, and where it has none energy is left out. */
  readonly kwh?: string;
}

/** Shows what was planned, spent, eaten and wasted. */
export function accountsCommand(ask: AccountsAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const { edited, day, stateThen } = open;
    const to = ask.to ?? day;
    const first = ask.each === "day" ? startOf(to, "week") : edited.startsOn;
    const from = ask.from ?? ([first, to].sort()[0] as CivilDate);
    const price = ask.kwh === undefined ? undefined : findPrice(ask.kwh, edited.currency, `--kwh ${ask.kwh}`);
    const turned = from > to ? [tellDaysTurned(from, to)] : [];
    if (turned.length > 0 || price?.ok === false)
      return { ok: false, faults: [...turned, ...(price?.ok === false ? price.faults : [])] };
    const data = toAccountsReport(open, ask.each, from, to, price?.value ?? edited.energyPrice?.kwhMinor);
    const lines = layAccounts({ ...terminal.page, data, names: toKeepNames(open, stateThen) });
    return { ok: true, value: { data, lines } };
  });
}

function toAccountsReport(
  open: OpenKeep,
  stretch: Stretch,
  from: CivilDate,
  to: CivilDate,
  kwhMinor: number | undefined,
): AccountsReport {
  const { edited, kitchen, day, stateThen: state, tables } = open;
  const sittings = platesBy(state, from, to).map(({ planned, eaten, news: _news, ...sitting }) => ({
    ...sitting,
    plannedPlates: planned.length,
    eatenPlates: eaten.length,
  }));
  const cookings = cookingsBy(state, from, to).map(({ cooking, portionMinor, planned }) => ({
    on: cooking.on,
    dish: cooking.dish,
    portions: cooking.portions,
    costMinor: cooking.costMinor,
    portionMinor,
    atLeast: cooking.atLeast,
    ...(planned !== undefined && { plannedPortionMinor: planned.portionMinor }),
  }));
  const report = {
    format: "halfloaf-accounts",
    version: 1,
    kitchen: edited.name,
    currency: edited.currency,
    from,
    to,
    lines: accountsBy(state, stretch, from, to),
    budget: budgetOf(edited, state, day),
    sittings,
    cookings,
    waste: wasteBy(kitchen, state, tables.foods, from, to),
    wasteByReason: wasteByReason(state, from, to),
    ...(kwhMinor !== undefined && { energy: toEnergy(energyBetween(state, tables.dishes, from, to, kwhMinor)) }),
  };
  return v.parse(AccountsReport, JSON.parse(JSON.stringify(report)));
}

function toEnergy({ kwh, costMinor = 0 }: EnergyDrawn): AccountsReport["energy"] {
  return { kwh, costMinor };
}
