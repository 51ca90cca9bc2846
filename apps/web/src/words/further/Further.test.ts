import { describe, expect, test } from "vitest";
import { furtherEn } from "./en.ts";
import { FURTHER_LOADERS, type FurtherPart } from "./Further.ts";

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
