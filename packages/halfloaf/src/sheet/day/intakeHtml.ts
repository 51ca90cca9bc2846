import { type Html, html, type Piece } from "../html/html.ts";
import { name, table } from "../html/table.ts";
import type { SheetWords } from "../words/SheetWords.ts";
import type { DayIntake, IntakeCell } from "./DaySheet.ts";

/**
 * What each eater gets, against the references: a table of what somebody is surely short of or above; what is open or met by
 * all is named in a sentence.
 */
export function intakeHtml(intakes: readonly DayIntake[], about: string, words: SheetWords): Html | false {
  if (intakes.length === 0) return false;
  const { day, figures } = words;
  const judged = intakes.filter(({ lines }) => lines.length > 0);
  const keys = [...new Set(judged.flatMap(({ lines }) => lines.map(keyOf)))];
  const cellOf = (intake: DayIntake, key: string) => intake.lines.find((line) => keyOf(line) === key);
  const verdictsOf = (key: string) => judged.map((intake) => cellOf(intake, key)?.verdict ?? "met");
  const isMissed = (key: string) => verdictsOf(key).some((verdict) => verdict === "short" || verdict === "above");
  const isOpen = (key: string) => !isMissed(key) && verdictsOf(key).includes("open");
  const shown = keys.filter(isMissed);
  const missed = new Set(shown.map(componentOf));
  const openOnes = new Set(keys.filter(isOpen).map(componentOf));
  // A component with a least and a most is told once, by the worse of the two.
  const open = namesOf(
    [...openOnes].filter((component) => !missed.has(component)),
    words,
  );
  const met = namesOf(
    keys.map(componentOf).filter((component) => !missed.has(component) && !openOnes.has(component)),
    words,
  );
  const sources = [...new Set(judged.flatMap(({ lines }) => lines.map(({ source }) => authorityOf(source))))];
  const energy = [figures.component("energyKj"), ...intakes.map((intake) => energyCell(intake, words))];
  const rows = shown.map((key) => [
    figures.component(componentOf(key)),
    ...intakes.map((intake) => cellHtml(cellOf(intake, key), words)),
  ]);
  const referred = intakes.flatMap(({ eater, referred: reason }) =>
    reason === undefined ? [] : [html`<p>${day.referred(eater.name, reason)}</p>`],
  );
  const signs = (["short", "above", "open"] as const).map(
    (verdict, at) => html`${at > 0 && ", "}${signOf(verdict, words)}${day.verdict[verdict]}`,
  );
  return html`<section class="long"><h2>${day.intake}</h2>
<div class="wide" tabindex="0" role="group" aria-label="${day.intake}">${table({
    columns: [{ title: day.component }, ...intakes.map(({ eater }) => ({ title: name(eater.name) }))],
    rows: [energy, ...rows],
  })}</div>
${referred}
${open.length > 0 && html`<p>${day.openFor(open.join(", "))}</p>`}
${met.length > 0 && html`<p>${day.metBy(met.join(", "))}</p>`}
<p class="note">${signs}. ${about}${sources.length > 0 && html` ${day.references(sources.join("; "))}`}</p></section>`;
}

function componentOf(key: string): string {
  return key.split(" ")[0] as string;
}

function namesOf(components: readonly string[], { figures }: SheetWords): string[] {
  return [...new Set(components.map((component) => figures.component(component)))];
}

/** Who a reference is from: a source names the publication first, then the place in it. */
function authorityOf(source: string): string {
  return (source.split(",")[0] as string).trim();
}

/** A component may have a least and a most. */
function keyOf({ component, kind }: IntakeCell): string {
  return `${component} ${kind}`;
}

/** The energy of an eater against the need of what is eaten here. */
function energyCell({ energyKj, energyNeedKj, hereShare }: DayIntake, { day, figures }: SheetWords): Piece {
  const need = energyNeedKj === undefined ? undefined : figures.energy(energyNeedKj);
  return html`${figures.energy(energyKj)} <span class="note">(${day.energyNeed(need, figures.percent(hereShare))})</span>`;
}

function cellHtml(cell: IntakeCell | undefined, words: SheetWords): Piece {
  if (cell === undefined) return "";
  const { day, figures } = words;
  const { component, kind, reference, amount, verdict, knownShare } = cell;
  const told = amount === undefined ? day.unknown : figures.amountOf(component, amount);
  const known = verdict === "open" && amount !== undefined ? `, ${day.known(figures.percent(knownShare))}` : "";
  // A bound is not broken before its figure or its unit.
  const bound = day.bound(kind, figures.amountOf(component, reference)).replaceAll(" ", "\u00a0");
  return html`${verdict !== "met" && signOf(verdict, words)}<span class="${verdict}">${told}</span> <span class="note">(${bound}${known})</span>`;
}

const SIGNS = { short: "▼", above: "▲", open: "?" } as const;

/** A sign that is told apart without colour, and read out as the word it stands for. */
function signOf(verdict: keyof typeof SIGNS, { day }: SheetWords): Html {
  return html`<span class="sign" role="img" aria-label="${day.verdict[verdict]}">${SIGNS[verdict]}</span> `;
}
