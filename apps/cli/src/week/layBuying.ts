import { tellCount, tellDayShort, tellMass, tellMinutes } from "@halfloaf/words/en";
import type { WeekPlan } from "halfloaf/kitchen";
import { harmless } from "../output/harmless.ts";
import { spread, wrap } from "../output/layout.ts";
import { pad } from "../output/textWidth.ts";
import { headingOf, moneyOf, type WeekPage } from "./WeekPage.ts";

type Trip = WeekPlan["trips"][number];
type Line = Trip["lines"][number];

/** The buying list by trip and by section of the shop, with what the till will say. */
export function layBuying(page: WeekPage): string[] {
  const { trips } = page.plan;
  if (trips.length === 0) return [headingOf(page, "To buy"), "", "Nothing: the stores are enough."];
  const hasEstimates = trips.some(({ lines }) => lines.some(({ estimate }) => estimate));
  const legend = hasEstimates ? ["", ...wrap("estimate: a price that was guessed, not seen.", page.width)] : [];
  return [headingOf(page, "To buy"), ...trips.flatMap((trip, at) => ["", ...layTrip(page, trip, at)]), ...legend];
}

function layTrip(page: WeekPage, trip: Trip, at: number): string[] {
  const { names, width, paint } = page;
  const head = `Trip ${at + 1}: ${names.shop(trip.shop)}, ${tellDayShort(trip.date)}`;
  const load = `${tellMass(trip.massG)}, ${tellMinutes(trip.minutes)}`;
  const sections = [...new Set(trip.lines.map(({ section }) => section))];
  const lines = sections.flatMap((section) => [
    paint.quiet(`  ${harmless(section)}`),
    ...trip.lines.filter((line) => line.section === section).flatMap((line) => layLine(page, line)),
  ]);
  return [...spread(head, load, width).map(paint.strong), ...lines, ...layTill(page, trip)];
}

/** A size on the label: "500 g", "1.5 litres". */
const SIZE = /\d\s*(?:g|kg|ml|cl|l|litres?)\b/i;

function layLine(page: WeekPage, { count, massG, label, priceMinor, savedMinor, estimate }: Line): string[] {
  const remarks = [
    ...(SIZE.test(label) ? [] : [`about ${tellMass(massG / count)}${count > 1 ? " each" : ""}`]),
    ...(savedMinor > 0 ? [`offer, ${moneyOf(page, savedMinor)} less`] : []),
    ...(estimate ? ["estimate"] : []),
  ];
  const told = `${harmless(label)}${remarks.length > 0 ? ` (${remarks.join("; ")})` : ""}`;
  return spread(told, moneyOf(page, priceMinor), page.width, pad(`${count} x`, 9, "start").padEnd(11));
}

function layTill(page: WeekPage, { tillMinor, fareMinor, lines }: Trip): string[] {
  const packs = lines.reduce((sum, { count }) => sum + count, 0);
  const estimated = lines.reduce((sum, { estimate, priceMinor }) => sum + (estimate ? priceMinor : 0), 0);
  const rest = [
    ...(estimated > 0 ? [`of it ${moneyOf(page, estimated)} estimated`] : []),
    ...(fareMinor > 0 ? [`fare ${moneyOf(page, fareMinor)} besides`] : []),
  ];
  const text = [`Till, ${tellCount(packs, "pack")}`, ...rest].join("; ");
  return spread(text, moneyOf(page, tillMinor), page.width, "  ").map(page.paint.strong);
}
