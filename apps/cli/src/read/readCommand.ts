import { relative } from "node:path";
import {
  type Findings,
  FoodIndex,
  type PriceListMapping,
  parsePriceListMapping,
  parseTableMapping,
  type ReadingWatch,
  type TableMapping,
} from "@halfloaf/reading";
import type { Tables } from "halfloaf/kitchen";
import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import { type OpenKitchen, USUAL_KITCHEN } from "../input/openKitchen.ts";
import { readJsonFile } from "../input/readJsonFile.ts";
import { openAnyKitchen } from "../keep/openAnyKitchen.ts";
import { isKept, namedFolder } from "../keep/openFolder.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { tellIssue } from "../words/issueWords.ts";
import { quote } from "../words/valueWords.ts";
import { findDishPlace } from "./dish/findDishPlace.ts";
import { readDishes, readMakingsOnly } from "./dish/readDishes.ts";
import { toDishText } from "./dish/toDishText.ts";
import type { FileReading } from "./FileReading.ts";
import { type FileKind, findKind } from "./findKind.ts";
import { keepInFolder } from "./keepInFolder.ts";
import { layPart } from "./layPart.ts";
import { type Input, openInput } from "./openInput.ts";
import { planKeeping, type ToWrite, writeAll } from "./planKeeping.ts";
import { type PriceContext, readPriceFile, readReceiptFile } from "./price/readPrices.ts";
import type { ReadReport } from "./ReadReport.ts";
import type { ReadWish } from "./ReadWish.ts";
import { readOwnFoods } from "./table/readOwnFoods.ts";
import { readTables } from "./table/readTables.ts";

/** What all files are read with. */
interface Setting {
  /** Those that come with the program, without anything of a kitchen. */
  readonly starter: Tables;
  readonly tables: Tables;
  /** The kitchen that was named; where prices need one and none was, the usual demo. */
  readonly kitchen: OpenKitchen;
  /** As it was named, by an option or by the environment; absent where none was. */
  readonly named?: string;
  readonly english: "british" | "american";
  readonly mapping?: unknown;
  readonly watch: ReadingWatch;
  /** The food names, searched by makings; made once and only where makings are read. */
  readonly index: () => FoodIndex;
}

/** Shows what files were understood as, and keeps it where that was asked and nothing is open. */
export async function readCommand(wish: ReadWish, terminal: Terminal): Promise<ExitCode> {
  const about = wish.files.join(", ");
  const refuseWith = (faults: readonly Fault[]) => refuseInput(about, faults, wish.json, terminal);
  const signal = { aborted: false };
  const stopListening = terminal.onStop(() => {
    signal.aborted = true;
  });
  try {
    const setting = await openSetting(wish, signal, terminal);
    if (!setting.ok) return refuseWith(setting.faults);
    const readings = await readAll(wish, setting.value, terminal);
    terminal.showProgress("");
    if (!readings.ok) return refuseWith(readings.faults);
    const kept =
      wish.keep || wish.out !== undefined ? await keep(wish, readings.value, setting.value, terminal) : undefined;
    const parts = readings.value.map(({ part }) => part);
    if (!wish.json)
      for (const line of parts.flatMap((part, at) => [...(at === 0 ? [] : [""]), ...layPart(part, terminal.page)]))
        terminal.print(line);
    if (kept?.ok === false) return refuseWith(kept.faults);
    for (const { file, what } of kept?.value ?? []) terminal.talk(`Kept in ${harmless(file)}: ${harmless(what)}.`);
    if (kept?.value.length === 0) terminal.talk("Nothing was kept: there was nothing new.");
    const report: ReadReport = {
      format: "halfloaf-reading",
      version: 1,
      parts,
      kept: (kept?.value ?? []).map(({ file }) => file),
    };
    if (wish.json) terminal.print(toJsonText(report));
    return EXIT.done;
  } finally {
    stopListening();
  }
}

async function openSetting(
  wish: ReadWish,
  signal: { readonly aborted: boolean },
  terminal: Terminal,
): Promise<Found<Setting>> {
  const settled = [wish.foods, wish.amounts, wish.packs, wish.leftOut].some((list) => list.length > 0);
  if (wish.files.length > 1 && (settled || wish.title !== undefined || wish.dish !== undefined))
    return refuse(tellOneFile());
  const starter = loadTables();
  const named = namedFolder(wish.kitchen, terminal);
  const kitchen = await openAnyKitchen(named ?? USUAL_KITCHEN, terminal, starter);
  if (!kitchen.ok) return kitchen;
  const mapping = wish.mapping === undefined ? undefined : readJsonFile(wish.mapping, terminal.cwd);
  if (mapping?.ok === false) return mapping;
  const { tables } = kitchen.value;
  let index: FoodIndex | undefined;
  const onProgress: ReadingWatch["onProgress"] = ({ file, items, size }) =>
    terminal.showProgress(`Reading ${harmless(file)}: ${items} rows, ${(size / 2 ** 20).toFixed(1)} MB`);
  return {
    ok: true,
    value: {
      starter,
      tables,
      kitchen: kitchen.value,
      ...(named !== undefined && { named }),
      english: wish.english ?? kitchen.value.kitchen.english,
      ...(mapping && { mapping: mapping.value.content }),
      watch: { signal, onProgress },
      index: () => {
        index ??= new FoodIndex(tables.foods.values());
        return index;
      },
    },
  };
}

/** Reads every file; all that can't be read is told at once. */
async function readAll(wish: ReadWish, setting: Setting, { cwd }: Terminal): Promise<Found<readonly FileReading[]>> {
  const readings: FileReading[] = [];
  const faults: Fault[] = [];
  for (const name of wish.files) {
    const input = await openInput(name, cwd, wish.fetch);
    const reading = input.ok ? await readOne(input.value, wish, setting) : input;
    if (reading.ok) readings.push(reading.value);
    else faults.push(...reading.faults);
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: readings };
}

async function readOne(input: Input, wish: ReadWish, setting: Setting): Promise<Found<FileReading>> {
  const { english, watch, tables } = setting;
  const { foods } = tables;
  if (input.kind === "folder") return readTables(input, wish, { foods, english, watch });
  const kind = findKind(input.name, input.head, setting.mapping, wish.as);
  if (!kind.ok) return kind;
  if (kind.value === "table" || kind.value === "download-csv" || kind.value === "download-json") {
    const mapping = kind.value === "table" ? parseMapping(parseTableMapping, setting.mapping) : undefined;
    if (mapping?.ok === false) return mapping;
    return readTables(input, wish, {
      foods,
      english,
      watch,
      ...(mapping && { mapping: mapping.value as TableMapping }),
    });
  }
  if (kind.value === "prices") {
    const mapping = parseMapping(parsePriceListMapping, setting.mapping);
    return mapping.ok ? readPriceFile(input, mapping.value as PriceListMapping, wish, priceContext(setting)) : mapping;
  }
  return readText(input, kind.value, wish, setting);
}

async function readText(
  input: Extract<Input, { kind: "file" }>,
  kind: FileKind,
  wish: ReadWish,
  setting: Setting,
): Promise<Found<FileReading>> {
  const read = await input.text();
  if (!read.ok) return read;
  const { text } = read.value;
  const { english, tables } = setting;
  const { foods } = tables;
  const options = () => ({ foods, index: setting.index(), english });
  if (kind === "dish" || kind === "page") return readDishes(input.name, kind, text, wish, options());
  if (kind === "makings") return { ok: true, value: readMakingsOnly(input.name, text, options()) };
  if (kind === "receipt") return readReceiptFile(input.name, text, wish, priceContext(setting));
  if (input.path === undefined) return refuse(tellNoFoodsFile(input.name));
  const json = readJsonFile(input.path, "/");
  return json.ok ? readOwnFoods(input.name, json.value.content, foods, setting.starter.foods, english) : json;
}

function priceContext({ kitchen: { kitchen }, tables: { foods }, watch }: Setting): PriceContext {
  return { kitchen, foods, watch };
}

function parseMapping<Mapping>(
  parse: (
    input: unknown,
  ) => { ok: true; value: Mapping } | { ok: false; issues: readonly Parameters<typeof tellIssue>[0][] },
  content: unknown,
): Found<Mapping> {
  const parsed = parse(content);
  return parsed.ok ? parsed : { ok: false, faults: parsed.issues.map((issue) => tellIssue(issue, content)) };
}

/** Writes what was asked for, unless something of it is open. */
async function keep(
  wish: ReadWish,
  readings: readonly FileReading[],
  setting: Setting,
  terminal: Terminal,
): Promise<Found<readonly { readonly file: string; readonly what: string }[]>> {
  const open = readings.flatMap((reading) => reading.open);
  if (open.length > 0) return { ok: false, faults: open.map((fault) => ({ ...fault, path: [] })) };
  const findings = joinFindings(readings);
  const { cwd } = terminal;
  const { named, starter } = setting;
  const out = wish.out === undefined ? undefined : toDishFile(wish.out, findings, setting, cwd);
  if (out?.ok === false) return out;
  const folder = wish.keep && named !== undefined && isKept(named, cwd) ? named : undefined;
  const kitchen = named === undefined ? undefined : setting.kitchen;
  const kept = wish.keep && folder === undefined ? planKeeping(findings, kitchen, starter, cwd) : undefined;
  if (kept?.ok === false) return kept;
  const inFolder = folder === undefined ? undefined : await keepInFolder(folder, findings, starter, terminal);
  if (inFolder?.ok === false) return inFolder;
  const written = writeAll([...(kept?.value ?? []), ...(out === undefined ? [] : [out.value])]);
  if (!written.ok) return written;
  const files = written.value.map(({ path, what }) => ({ file: relative(cwd, path) || path, what }));
  const what = inFolder?.value ?? "";
  return { ok: true, value: [...(folder === undefined || what === "" ? [] : [{ file: folder, what }]), ...files] };
}

function joinFindings(readings: readonly FileReading[]): Findings {
  const join = <Key extends keyof Findings>(key: Key) =>
    readings.flatMap(({ findings }) => findings[key] as readonly unknown[]) as unknown as Findings[Key];
  return {
    dishes: join("dishes"),
    observations: join("observations"),
    newPacks: join("newPacks"),
    matches: join("matches"),
    foods: join("foods"),
    overrides: join("overrides"),
  };
}

function toDishFile(name: string, { dishes }: Findings, { tables, english }: Setting, cwd: string): Found<ToWrite> {
  const [dish] = dishes;
  if (dish === undefined || dishes.length > 1) return refuse(tellOneDish(dishes.length));
  const place = findDishPlace(name, cwd);
  if (!place.ok) return place;
  const text = `${toDishText(dish, tables, english)}\n`;
  return { ok: true, value: { path: place.value, text, what: `the dish ${dish.id}` } };
}

function tellOneFile(): Fault {
  return {
    code: "one-file",
    path: [],
    sentence: "Lines are settled in one file at a time.",
    remedy: "Name one file, or leave out what settles its lines.",
  };
}

function tellOneDish(count: number): Fault {
  return {
    code: "one-dish",
    path: [],
    sentence: `--out writes one dish, and ${count} were read.`,
    remedy: "Say with --dish which one is meant.",
  };
}

function tellNoFoodsFile(name: string): Fault {
  return {
    code: "foods-no-file",
    path: [],
    value: quote(name),
    sentence: `${quote(name)} is no file on a disk.`,
    remedy: "Save it as a file and name that.",
  };
}
