import { loadBeginningPhrasesDe, loadDemoKitchens, loadStarterShops, loadStarterTables } from "@halfloaf/data";
import { checkKitchen, parseKitchen, parseTables } from "halfloaf/kitchen";
import * as v from "valibot";
import { expect, it } from "vitest";
import { layPhrases } from "./layPhrases.ts";
import type { StarterShops } from "./loadStarter.ts";

const phrases = v.parse(v.record(v.string(), v.string()), loadBeginningPhrasesDe());
const english = { kitchens: loadDemoKitchens(), shops: loadStarterShops() as StarterShops };
const german = layPhrases(english, phrases);

/** What German says as English does; the other parts of a label are figures with units of the metre. */
const SAME =
  /^(Port Ansel|Asha|Bram|Cleo|Dov|Efua|Finn|Ilse Tarn|Joren Pell|Maris Oake|Bulgur|Butter|Cheddar|Couscous|Dill|Harissa|Ketchup|Mayonnaise|Oregano|Polenta|Spaghetti|Tortillas|\d+( k?g| ml)?|\d+ pints)$/i;

interface Worded {
  readonly name: string;
  readonly note: string;
  readonly eaters: readonly { readonly name: string }[];
  readonly packs: readonly { readonly label: string }[];
}

function textsOf({ kitchens, shops }: typeof german): string[] {
  const worded = kitchens.map(({ content }) => content as Worded);
  const names = worded.flatMap(({ name, note, eaters }) => [name, note, ...eaters.map((eater) => eater.name)]);
  const packs = [...worded.flatMap((kitchen) => kitchen.packs), ...shops.packs];
  return [...names, ...packs.map(({ label }) => label)];
}

it("all that a new kitchen begins with is told in German, with the same figures", () => {
  const [said, told] = [textsOf(english), textsOf(german)];
  const left = said.flatMap((text, at) => {
    const kept = new Set((told[at] ?? "").split(", "));
    return text.split(", ").filter((part) => kept.has(part) && !SAME.test(part));
  });
  expect([...new Set(left)]).toEqual([]);
  const figures = (text: string | undefined) => text?.match(/\d+([.,]\d+)?/g)?.map((each) => each.replace(",", "."));
  expect(told.map(figures)).toEqual(said.map(figures));
  expect(german.shops.packs.find(({ label }) => label.includes("1,5 kg"))).toBeDefined();
});

it("a demo kitchen in German is the same kitchen but for its words, and a sound one", () => {
  const tables = parseTables(loadStarterTables());
  if (!tables.ok) throw new Error("the starter tables are faulty");
  const bare = (content: unknown) => {
    const { name: _, note: __, eaters, packs, ...rest } = content as Worded;
    return {
      ...rest,
      eaters: eaters.map((each) => ({ ...each, name: "" })),
      packs: packs.map((each) => ({ ...each, label: "" })),
    };
  };
  for (const [at, { content }] of german.kitchens.entries()) {
    expect(bare(content)).toEqual(bare(english.kitchens[at]?.content));
    const read = parseKitchen(content);
    expect(read.ok && checkKitchen(read.value, tables.value)).toEqual([]);
  }
});
