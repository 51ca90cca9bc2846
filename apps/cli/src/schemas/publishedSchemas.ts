import { PriceListMapping, TableMapping } from "@halfloaf/reading";
import { OwnFoods } from "halfloaf/food";
import { Kitchen, WeekPlan } from "halfloaf/kitchen";
import type { GenericSchema } from "valibot";
import { CardData } from "../card/CardData.ts";
import { ChoicesReport } from "../choices/ChoicesReport.ts";
import { AccountsReport } from "../keep/AccountsReport.ts";
import { ActReport } from "../keep/ActReport.ts";
import { HistoryReport } from "../keep/HistoryReport.ts";
import { PricesReport } from "../keep/PricesReport.ts";
import { StoresReport } from "../keep/StoresReport.ts";
import { TodayReport } from "../keep/TodayReport.ts";
import { MendReport } from "../mend/MendReport.ts";
import { ReadReport } from "../read/ReadReport.ts";
import { WhyReport } from "../why/WhyReport.ts";
import { FaultReport } from "../words/FaultReport.ts";
import { DayData } from "../work/day/DayData.ts";
import { PaceFile } from "../work/pace/PaceFile.ts";
import { PaceReport } from "../work/pace/PaceReport.ts";
import { WorkData } from "../work/WorkData.ts";

/** One published file format: its schema, and what a reader should know before the rest. */
export interface PublishedSchema {
  /** The file is `docs/schemas/<name>.json`. */
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly schema: GenericSchema;
}

/** The formats of the files that the commands read and of the data that they print. */
export const PUBLISHED_SCHEMAS: readonly PublishedSchema[] = [
  {
    name: "kitchen",
    title: "Halfloaf kitchen, version 1",
    description:
      "Everything one household keeps. Money in minor units, masses in g, dates as YYYY-MM-DD; absent is unknown.",
    schema: Kitchen,
  },
  {
    name: "week",
    title: "Halfloaf week, version 1",
    description: "A plan of some days. Money in minor units, masses in g as purchased, energy in kJ.",
    schema: WeekPlan,
  },
  {
    name: "card",
    title: "Halfloaf costing card, version 1",
    description:
      "What a dish costs, takes and gives in one kitchen. Money in minor units, masses in g for all portions.",
    schema: CardData,
  },
  {
    name: "work",
    title: "Halfloaf order of work, version 1",
    description:
      "When to begin each step of one cooking. Minutes from the beginning; clock times follow from serveAtMinutes.",
    schema: WorkData,
  },
  {
    name: "day",
    title: "Halfloaf jobs of a day, version 1",
    description: "What there is to do on one day of a week, by time, and how long its cookings take as a whole.",
    schema: DayData,
  },
  {
    name: "pace",
    title: "Halfloaf pace, version 1",
    description: "How long steps took in finished cookings of a kitchen, as it is kept in a file.",
    schema: PaceFile,
  },
  {
    name: "pace-report",
    title: "Halfloaf learned pace, version 1",
    description: "By kind of step what stated minutes are multiplied by, and what that rests on.",
    schema: PaceReport,
  },
  {
    name: "why",
    title: "Halfloaf reasons, version 1",
    description:
      "Why a plan is as it is. Money in minor units, differences as the planner weighs them, found by search.",
    schema: WhyReport,
  },
  {
    name: "mend",
    title: "Halfloaf mended week, version 1",
    description: "What a change made of a kept week, and the new week. Money in minor units.",
    schema: MendReport,
  },
  {
    name: "choices",
    title: "Halfloaf choices, version 1",
    description:
      "Plans between which money and one other thing decide, from the cheapest on. Money in minor units; found by search, not proven.",
    schema: ChoicesReport,
  },
  {
    name: "foods",
    title: "Halfloaf own foods, version 1",
    description:
      "Foods of a kitchen's own and figures from elsewhere, to be read into a kitchen. Per 100 g edible portion; absent is unknown.",
    schema: OwnFoods,
  },
  {
    name: "table-mapping",
    title: "Halfloaf mapping of a composition table, version 1",
    description: "Which column of a table in CSV holds which component, in which unit, and what it is for.",
    schema: TableMapping,
  },
  {
    name: "price-list-mapping",
    title: "Halfloaf mapping of a price list, version 1",
    description: "Which column of a price list in CSV holds what, and how numbers and days are written in it.",
    schema: PriceListMapping,
  },
  {
    name: "reading",
    title: "Halfloaf reading, version 1",
    description:
      "What files were understood as, beside what stands in them, with how sure each part is. Money in minor units; absent is unknown.",
    schema: ReadReport,
  },
  {
    name: "act",
    title: "Halfloaf act, version 1",
    description: "What one command wrote into a kept kitchen. Money in minor units, masses in g.",
    schema: ActReport,
  },
  {
    name: "stores",
    title: "Halfloaf stores, version 1",
    description: "What is in the stores of a kept kitchen on a day, in the order in which to use it.",
    schema: StoresReport,
  },
  {
    name: "today",
    title: "Halfloaf day in the kitchen, version 1",
    description: "What to do, to buy, to use up and to count on a day, and the week's money.",
    schema: TodayReport,
  },
  {
    name: "prices",
    title: "Halfloaf prices, version 1",
    description: "The prices of a kept kitchen's packs over time, with unit prices and how old they are.",
    schema: PricesReport,
  },
  {
    name: "accounts",
    title: "Halfloaf accounts, version 1",
    description: "What was planned, spent, eaten and wasted in a kept kitchen. Money in minor units at lot cost.",
    schema: AccountsReport,
  },
  {
    name: "history",
    title: "Halfloaf history, version 1",
    description: "Who did what when in a kept kitchen.",
    schema: HistoryReport,
  },
  {
    name: "faults",
    title: "Halfloaf faults, version 1",
    description:
      "All that is wrong with what was given, or the limits that no plan keeps; no fault means that it is sound.",
    schema: FaultReport,
  },
];
