import { describe, expect, test } from "vitest";
import { furtherEn } from "./further/en.ts";
import { FURTHER_LOADERS, type FurtherPart } from "./further/Further.ts";
import { toCounted } from "./toCounted.ts";

describe("a text with a number", () => {
  test("takes the form of the number as it is shown", () => {
    for (const language of ["en", "de"]) {
      const counted = toCounted(language);
      const forms = { one: "one", other: "other" };
      expect([0, 0.5, 1, 1.04, 1.5, 2, 21].map((count) => counted(count, forms))).toEqual(
        "other other one one other other other".split(" "),
      );
    }
  });

  test("falls back to the last form where a language has more of them", () => {
    expect(toCounted("pl")(3, { one: "one", other: "other" })).toBe("other");
  });
});

describe("the further texts", () => {
  const parts = Object.keys(FURTHER_LOADERS) as FurtherPart[];

  test("have the same keys in every language, and none is left empty", async () => {
    for (const part of parts) {
      const [en, de] = await Promise.all([FURTHER_LOADERS[part].en(), FURTHER_LOADERS[part].de()]);
      expect(pathsOf(de)).toEqual(pathsOf(en));
    }
  });

  test("are loaded in parts that have no text of another part", async () => {
    const loaded = await Promise.all(parts.map((part) => FURTHER_LOADERS[part].en()));
    const keys = loaded.flatMap((part) => Object.keys(part));
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.toSorted()).toEqual(Object.keys(furtherEn).toSorted());
  });
});

/** Where the texts of a catalogue stand. */
function pathsOf(texts: object): string[] {
  return Object.entries(texts)
    .flatMap(([key, text]) => {
      if (typeof text === "object") return pathsOf(text as object).map((path) => `${key}.${path}`);
      if (text === "") throw new Error(`the text ${key} is empty`);
      return [`${key} ${typeof text}`];
    })
    .toSorted();
}
