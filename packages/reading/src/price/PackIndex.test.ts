import { describe, expect, test } from "vitest";
import { PackIndex, rememberMatch } from "./PackIndex.ts";
import { gtinOf, makePack } from "./price.testing.ts";

const gtin = gtinOf("501234567890");
const oats = makePack({ gtin, brand: "Ebbing Mill" });
const beans = makePack({ id: "beans", label: "Kidney beans in water, 400 g", food: "kidney-beans-tinned" });
const tomatoes = makePack({ id: "tomatoes", label: "Chopped tomatoes, 400 g", food: "tomatoes-tinned" });
const oatsElsewhere = makePack({ id: "oats-quay", shop: "quay-market", gtin });
const shop = "tally-store";

const packs = [oats, beans, tomatoes, oatsElsewhere];

function match(goods: { text: string; shop?: string; gtin?: string; brand?: string }, known = packs) {
  const found = new PackIndex(known).match(goods);
  return found.kind === "known"
    ? [found.by, found.pack.id]
    : [
        "open",
        ...found.nearest.map(({ pack }) => pack.id),
        ...(found.sameGoods ? [`same as ${found.sameGoods.id}`] : []),
      ];
}

describe("goods are matched to a known pack", () => {
  test("by number within their shop, whatever the text says", () => {
    expect(match({ text: "xyz", shop, gtin })).toEqual(["gtin", "oats-500"]);
    expect(match({ text: "xyz", shop, gtin: `0${gtin}` })).toEqual(["gtin", "oats-500"]);
    expect(match({ text: "xyz", shop: "quay-market", gtin })).toEqual(["gtin", "oats-quay"]);
  });

  test("by what was matched before in the same shop, however it is spaced or in capitals", () => {
    const known = rememberMatch(packs, { text: "KDNY BNS 400G", pack: "beans" });
    expect(match({ text: "kdny  bns 400 g", shop }, known)).toEqual(["memory", "beans"]);
    expect(match({ text: "KDNY BNS 400G", shop: "quay-market" }, known)[0]).toBe("open");
    expect(match({ text: "KDNY BNS 400G" }, known)[0]).toBe("open");
  });

  test("by their own label, with or without the brand", () => {
    expect(match({ text: "ROLLED OATS 500G", shop })).toEqual(["label", "oats-500"]);
    expect(match({ text: "Ebbing Mill rolled oats, 500 g", shop })).toEqual(["label", "oats-500"]);
    expect(match({ text: "rolled oats 500 g", brand: "Ebbing Mill", shop })).toEqual(["label", "oats-500"]);
  });

  test("never by likeness alone: the nearest are offered, the likeliest first", () => {
    expect(match({ text: "Chpd tomatos 400 g", shop })).toEqual(["open", "tomatoes"]);
    expect(match({ text: "Chopped tomatoes, 800 g", shop })[0]).toBe("open");
    expect(match({ text: "Motor oil", shop })).toEqual(["open"]);
  });

  test("not to a pack of another number, whose goods are offered instead", () => {
    const other = gtinOf("501234567891");
    expect(match({ text: "Rolled oats, 500 g", shop, gtin: other })).toEqual(["open", "oats-500"]);
    expect(match({ text: "xyz", shop: "elsewhere", gtin })).toEqual(["open", "same as oats-500"]);
  });

  test("not where two packs could be meant", () => {
    expect(match({ text: "Rolled oats, 500 g" })[0]).toBe("open");
    expect(match({ text: "x", gtin })[0]).toBe("open");
  });

  test("names of an object's own parts are texts like any other", () => {
    expect(match({ text: "__proto__", shop: "constructor" })).toEqual(["open"]);
  });
});

describe("what was said to mean a pack", () => {
  const said = (...pairs: [string, string][]) =>
    pairs.reduce((known, [text, pack]) => rememberMatch(known, { text, pack }), packs);
  const texts = (known: typeof packs) => known.map((pack) => pack.knownAs);

  test("takes the place of what was said before of the same text in the same shop", () => {
    expect(texts(said(["Oats", "oats-500"], ["OATS ", "beans"]))).toEqual([undefined, ["OATS "], undefined, undefined]);
    expect(texts(said(["Oats", "oats-500"], ["Oats", "oats-quay"]))).toEqual([
      ["Oats"],
      undefined,
      undefined,
      ["Oats"],
    ]);
    expect(texts(said(["Oats", "beans"], ["Porridge", "beans"], ["oats", "beans"]))[1]).toEqual(["Porridge", "oats"]);
  });

  test("leaves all other packs as they are, and all where the pack is not there", () => {
    const known = said(["Oats", "beans"], ["Oats", "gone"]);
    expect(known.filter((pack, at) => pack === packs[at]).length).toBe(3);
  });

  test("is forgotten, the oldest first, beyond twelve texts of a pack", () => {
    const many = Array.from({ length: 15 }, (_, at): [string, string] => [`text ${at}`, "beans"]);
    expect(texts(said(...many))[1]).toEqual(many.slice(3).map(([text]) => text));
  });
});
