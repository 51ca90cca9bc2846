import { type SittingKind, sharePortions } from "halfloaf/kitchen";
import { type EventBody, eat, menuOn, type PlateWish } from "halfloaf/kitchen/record";
import type { ExitCode } from "../exitCodes.ts";
import { findPrice } from "../input/findPrice.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import {
  tellNoAmount,
  tellNobodyLeft,
  tellNothingNamed,
  tellNothingServed,
  tellNoWeekThen,
} from "../words/keepFaultWords.ts";
import { tellGuestsPlates, tellShort } from "../words/keepWords.ts";
import { findEater } from "./findEater.ts";
import { type AskedItem, amountG, findItem } from "./Item.ts";
import { isAwayAt } from "./isAwayAt.ts";
import type { KeepAsk } from "./KeepAsk.ts";
import type { OpenKeep } from "./openKeep.ts";
import { runKeep } from "./runKeep.ts";
import { writeAct } from "./writeAct.ts";

/** What became of a sitting. */
export interface SittingAsk extends KeepAsk {
  readonly sitting: SittingKind;
  /** Portions of dishes or g of foods: by whom, or shared by all who sit here; "guest" for a guest. */
  readonly ate: readonly AskedPlate[];
  /** True: all ate what the accepted week has for them. */
  readonly asPlanned: boolean;
  /** Eaters who did not eat here; "all" for nobody did. */
  readonly skipped: readonly string[];
  readonly guests?: number;
  /** Eaters, or "all", who ate elsewhere, and what it cost where that is known. */
  readonly out: readonly { readonly who: string; readonly cost?: string }[];
}

/** A plate as it was written: `joren:soup=1`. */
export interface AskedPlate {
  readonly who: string;
  readonly item: AskedItem;
}

/** Books what became of a sitting: eaten, skipped, guests, eaten elsewhere. */
export function sittingCommand(ask: SittingAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const news = listNews(ask, open);
    const plates = listPlates(ask, open);
    const faults = [...(news.ok ? [] : news.faults), ...(plates.ok ? [] : plates.faults)];
    if (!news.ok || !plates.ok) return { ok: false, faults };
    if (news.value.length + plates.value.length === 0) return refuse(tellNothingTold(ask, open));
    return writeAct(open, terminal.page, (pen) => {
      const told = news.value.map((body) => pen.write(body));
      const { day, state, names } = open;
      const { eaten, short } = eat(state, { on: day, sitting: ask.sitting, plates: plates.value }, pen);
      if (told.length === 0 && eaten === undefined) return refuse(tellNothingServed());
      const sentences = [
        ...short.map((plate) => tellShort(plate, names)),
        ...(areGuestsOpen(ask, plates.value) ? [tellGuestsPlates(ask.sitting)] : []),
      ];
      const missing = short.map((plate) =>
        "dish" in plate ? { dish: plate.dish, amount: plate.portions } : { food: plate.food, amount: plate.massG },
      );
      const rows = eaten === undefined ? told : [...told, eaten];
      return { ok: true, value: { rows, extra: { sentences, ...(missing.length > 0 && { short: missing }) } } };
    });
  });
}

function tellNothingTold({ asPlanned, sitting }: SittingAsk, { state, day }: OpenKeep): Fault {
  if (!asPlanned) return tellNothingNamed();
  return menuOn(state, day) === undefined
    ? tellNoWeekThen(day, "say what was eaten with --ate")
    : tellNobodyLeft(sitting);
}

/** True where it is told what those who sit here ate, and that there were guests, and not what these ate. */
function areGuestsOpen({ guests = 0 }: SittingAsk, plates: readonly PlateWish[]): boolean {
  return guests > 0 && plates.length > 0 && plates.every(({ eater }) => eater !== undefined);
}

function listNews({ sitting, skipped, guests, out }: SittingAsk, open: OpenKeep): Found<EventBody[]> {
  const on = open.day;
  const faults: Fault[] = [];
  const who = (word: string): { eater?: string } => {
    if (word === "all") return {};
    const found = findEater(word, open.edited);
    if (found.ok) return { eater: found.value };
    faults.push(...found.faults);
    return {};
  };
  const bodies: EventBody[] = [
    ...skipped.map((word): EventBody => ({ kind: "skipped", on, sitting, ...who(word) })),
    ...out.map(({ who: word, cost }): EventBody => {
      const price = cost === undefined ? undefined : findPrice(cost, open.edited.currency, `--out ${word}=${cost}`);
      if (price?.ok === false) faults.push(...price.faults);
      return { kind: "ate-out", on, sitting, ...who(word), ...(price?.ok && { costMinor: price.value }) };
    }),
    ...(guests === undefined ? [] : [{ kind: "guest" as const, on, sitting, portions: guests }]),
  ];
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: bodies };
}

function listPlates(ask: SittingAsk, open: OpenKeep): Found<PlateWish[]> {
  const found = ask.ate.map((plate) => toPlate(plate, open));
  const faults = found.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return { ok: false, faults };
  const named = found.flatMap((one) => (one.ok ? [one.value] : []));
  return { ok: true, value: [...named, ...(ask.asPlanned ? plannedPlates(ask, open) : [])] };
}

function toPlate({ who, item: asked }: AskedPlate, open: OpenKeep): Found<PlateWish> {
  const eater = who === "guest" ? undefined : findEater(who, open.edited);
  const item = findItem(asked.name, open);
  const faults = [...(eater?.ok === false ? eater.faults : []), ...(item.ok ? [] : item.faults)];
  if (eater?.ok === false || !item.ok) return { ok: false, faults };
  const whose = eater === undefined ? {} : { eater: eater.value };
  const { value } = item;
  const dish = value.kind === "dish" ? value.dish : value.kind === "lot" ? value.lot.cooked?.dish : undefined;
  if (dish !== undefined) return { ok: true, value: { ...whose, dish, portions: asked.amount?.value ?? 1 } };
  const food = value.kind === "food" ? value.food : value.kind === "lot" ? value.lot.food : undefined;
  if (asked.amount === undefined || food === undefined || !(asked.amount.value > 0))
    return refuse(tellNoAmount(asked.text));
  return { ok: true, value: { ...whose, food, massG: amountG(asked.amount, value, open) } };
}

/** What the accepted week has for those who sit here, without those who are told, now or before, to be away or to have eaten it. */
function plannedPlates({ sitting, skipped, out }: SittingAsk, open: OpenKeep): PlateWish[] {
  const isAway = (eater: string): boolean =>
    away.includes(eater) || isAwayAt(open.state, { on: open.day, sitting }, eater);
  const hasEaten = (eater: string, dish: string): boolean =>
    open.state.plates.some(
      (plate) => plate.on === open.day && plate.sitting === sitting && plate.eater === eater && plate.dish === dish,
    );
  const away = [...skipped, ...out.map(({ who }) => who)].flatMap((word) => {
    const found = findEater(word, open.edited);
    return found.ok ? [found.value] : [];
  });
  const week = menuOn(open.state, open.day)?.week;
  const sittings = (week?.sittings ?? []).filter(({ date, kind }) => date === open.day && kind === sitting);
  return sittings.flatMap((planned) =>
    sharePortions(planned)
      .filter(({ eater }) => !isAway(eater) && !hasEaten(eater, planned.dish))
      .map(({ eater, portions }): PlateWish => {
        const plate = { dish: planned.dish, portions };
        return open.edited.eaters.some(({ id }) => id === eater) ? { eater, ...plate } : plate;
      }),
  );
}
