import { tellAmountOf, tellComponent, tellEnergy, tellPercent, tellReferral } from "@halfloaf/words/en";
import type { WeekPlan } from "halfloaf/kitchen";
import { keepTogether, layTable, wrap, wrapBehind } from "../output/layout.ts";
import { headingOf, type WeekPage } from "./WeekPage.ts";

type EaterIntake = WeekPlan["intake"][number];
type IntakeLine = EaterIntake["lines"][number];

/** What each eater gets a day against the references: first what is short, above or open, then what is met. */
export function layIntake(page: WeekPage): string[] {
  const { intake } = page.plan;
  if (intake.length === 0) return [];
  return [
    headingOf(page, "Intake a day"),
    ...intake.flatMap((eater) => ["", ...layEater(page, eater)]),
    "",
    ...layLegend(page),
  ];
}

function layEater(page: WeekPage, intake: EaterIntake): string[] {
  const { names, width, paint } = page;
  const name = names.eater(intake.eater);
  const head = paint.strong(name);
  if (intake.referred !== undefined) {
    return [
      head,
      ...wrap(`Energy from these plates: ${tellEnergy(intake.energyKj)}.`, width),
      ...wrap(tellReferral(name, intake.referred), width),
    ];
  }
  const { met, missed, within } = sortOut(intake.lines);
  return [
    head,
    ...wrap(tellEnergyHere(intake), width),
    ...layMissed(page, missed),
    ...layList("  open   ", "within, as far as known: ", within, width),
    ...layList("  met    ", "", met, width),
  ];
}

function layList(lead: string, opening: string, lines: readonly IntakeLine[], width: number): string[] {
  return lines.length === 0 ? [] : wrapBehind(lead, `${opening}${lines.map(tellHeld).join("; ")}.`, width);
}

/** What is missed or could be, the surest first; upper limits that the known part keeps; what is met. */
function sortOut(lines: readonly IntakeLine[]): Readonly<Record<"missed" | "within" | "met", IntakeLine[]>> {
  const isWithin = ({ verdict, kind, knownPerDay }: IntakeLine) =>
    verdict === "open" && kind === "at-most" && knownPerDay !== undefined;
  const met = lines.filter(({ verdict }) => verdict === "met");
  const within = lines.filter(isWithin);
  const missed = lines.filter((line) => line.verdict !== "met" && !isWithin(line));
  return { met, within, missed: missed.sort((a, b) => ORDER.indexOf(a.verdict) - ORDER.indexOf(b.verdict)) };
}

const ORDER = ["short", "above", "open", "met"] as const satisfies readonly IntakeLine["verdict"][];

function tellEnergyHere({ energyKj, energyNeedKj, hereShare }: EaterIntake): string {
  const here =
    hereShare >= 1 - 1e-9 ? "all meals are eaten here" : `${tellPercent(hereShare)} of the days' energy is eaten here`;
  const need = energyNeedKj === undefined || energyNeedKj <= 0 ? "" : `, needed ${tellEnergy(energyNeedKj)}`;
  const share =
    energyNeedKj === undefined || energyNeedKj <= 0 ? "" : `, which is ${tellPercent(energyKj / energyNeedKj)}`;
  return `Energy ${tellEnergy(energyKj)}${need}${share}; ${here}.`;
}

function layMissed({ width, paint }: WeekPage, lines: readonly IntakeLine[]): string[] {
  if (lines.length === 0) return [];
  const columns = [
    { title: "" },
    { title: "component", wraps: true },
    { title: "a day", right: true },
    { title: "reference", right: true },
    { title: "by", right: true },
    { title: "known", right: true },
  ];
  const rows = lines.map((line) => [
    line.verdict,
    `${tellComponent(line.component)} ${tellBasis(line)}`,
    line.knownPerDay === undefined ? "unknown" : tellAmountOf(line.component, line.knownPerDay),
    `${line.kind === "at-least" ? ">=" : "<="} ${tellAmountOf(line.component, line.referencePerDay)}`,
    tellDistance(line),
    tellPercent(line.knownShare),
  ]);
  const laid = layTable(columns, rows, width, 2);
  const [titles, ...rest] = laid;
  return [paint.quiet(titles ?? ""), ...rest.map((text) => paintRow(text, paint))];
}

function paintRow(text: string, paint: WeekPage["paint"]): string {
  return /^ {2}(short|above)\b/.test(text) ? paint.warning(text) : text;
}

function tellBasis({ basis }: IntakeLine): string {
  return `(${basis.replaceAll("-", " ")})`;
}

/** How far the known part is from the reference; where a part is unknown, it could only add to it. */
function tellDistance({ component, knownPerDay, referencePerDay }: IntakeLine): string {
  if (knownPerDay === undefined) return "";
  const sign = knownPerDay < referencePerDay ? "-" : "+";
  return `${sign}${tellAmountOf(component, Math.abs(referencePerDay - knownPerDay))}`;
}

function tellHeld({ component, verdict, kind, knownPerDay, referencePerDay, knownShare }: IntakeLine): string {
  const eaten = knownPerDay === undefined ? "" : ` ${tellAmountOf(component, knownPerDay)}`;
  const bound = `${kind === "at-least" ? ">=" : "<="} ${tellAmountOf(component, referencePerDay)}`;
  // A reference that is met stays met whatever the unknown part brings.
  const share = verdict === "open" ? `, ${tellPercent(knownShare)} known` : "";
  return `${tellComponent(component)}${keepTogether(eaten)} (${keepTogether(`${bound}${share}`)})`;
}

function layLegend({ width }: WeekPage): string[] {
  return wrap(
    "A day means the days' food over the share of the days eaten here. Known: share of the food, by mass, whose figure is known; the unknown part could only add. Short and above are sure by what is known; open: the unknown part decides. No figure here is a diagnosis.",
    width,
  );
}
