import { tellMoment } from "@halfloaf/words/clock";
import { tellMinutes } from "@halfloaf/words/en";
import type { PlacedCaution, SheetLine, StepLine } from "halfloaf/kitchen";
import { letterOf } from "halfloaf/sheet";
import { harmless } from "../output/harmless.ts";
import { keepTogether, layTable, wrapBehind } from "../output/layout.ts";
import { tellLetters, type WorkPage } from "./WorkPage.ts";

const COLUMNS = [{ title: "", right: true }, { title: "", right: true }, { title: "" }, { title: "", wraps: true }];

/** The steps by time, each with its cautions below it; those that are over already are left out. */
export function laySteps(page: WorkPage): string[] {
  const { sheet, width, paint, retimed } = page;
  const left = sheet.lines.filter(({ endMinutes }) => retimed === undefined || endMinutes > retimed.nowMinutes);
  const rows = left.flatMap((line): string[][] => [
    [
      tellMoment(sheet, line.startMinutes),
      tellLength(line),
      line.kind === "step" ? `${letterOf(line.dish)}:${harmless(line.step)}` : "",
      tellWork(page, line),
    ],
    ...(line.kind === "step" ? line.cautions.map((caution) => ["", "", "", `! ${tellCaution(caution)}`]) : []),
  ]);
  const served = [tellMoment(sheet, sheet.serveMinutes), "", "", `Serve ${tellLetters([...sheet.dishes.keys()])}.`];
  const heading = sheet.serveAtMinutes === undefined ? "STEPS, BY MINUTE" : "STEPS";
  return [paint.heading(heading), "", ...layTable(COLUMNS, [...rows, served], width, 2)];
}

/** A caution with its other temperatures and who says so. */
export function tellCaution({ text, authority, otherTimes = [] }: PlacedCaution): string {
  const other = otherTimes.map(({ tempC, minutes }) => keepTogether(`${tempC} °C for ${tellShort(minutes)}`));
  const same = other.length === 0 ? "" : ` Does as much: ${other.join(", ")}.`;
  return `${harmless(text)}${same} [${harmless(authority)}]`;
}

/** Lines of a caution with its lead. */
export function layCaution(lead: string, caution: PlacedCaution, width: number): string[] {
  return wrapBehind(lead, tellCaution(caution), width);
}

function tellLength({ startMinutes, endMinutes }: SheetLine): string {
  return endMinutes === startMinutes ? "" : keepTogether(`${endMinutes - startMinutes} min`);
}

function tellWork(page: WorkPage, line: SheetLine): string {
  if (line.kind === "oven")
    return `Turn the oven to ${line.tempC} °C; it is there at ${tellMoment(page.sheet, line.endMinutes)}.`;
  const who = tellWho(page, line.cooks);
  if (line.kind === "step") return `${harmless(line.text)}${who} (${[tellHands(line), ...tellKit(line)].join(", ")})`;
  if (line.kind === "board-wash") return `Wash the board, the knife and your hands: raw food was there.${who}`;
  return `Wash up a ${line.part} for what comes next.${who}`;
}

function tellHands({ hands }: StepLine): string {
  return { full: "both hands", eye: "an eye on it", none: "by itself" }[hands];
}

function tellKit({ kit, tempC }: StepLine): string[] {
  const parts = kit.map(({ part, number }) => keepTogether(number === undefined ? part : `${part} ${number}`));
  return tempC === undefined ? parts : [...parts, keepTogether(`${tempC} °C`)];
}

function tellWho({ sheet }: WorkPage, cooks: readonly number[]): string {
  if (sheet.cooks === 1 || cooks.length === 0) return "";
  return ` Cook ${cooks.join(", then ")}.`;
}

/** A short time in seconds or minutes, rounded up so that it never asks for less. */
function tellShort(minutes: number): string {
  const seconds = Math.ceil(minutes * 60 - 1e-6);
  return seconds < 120 ? `${seconds} s` : tellMinutes(Math.ceil(minutes - 1e-6));
}
