import { loadStarterTables } from "@halfloaf/data";
import { parseTables } from "halfloaf/kitchen";
import { cautionsOf } from "halfloaf/safety";
import { describe, expect, test } from "vitest";
import { CAUTION_WORDS_DE } from "./cautionWordsDe.ts";

const read = parseTables(loadStarterTables());
if (!read.ok) throw new Error("the starter tables are faulty");
const { dishes, foods, safety } = read.value;

describe("cautions in German", () => {
  test("tell every caution of every dish by every authority, with all its figures and no others", () => {
    const seen = new Set<string>();
    for (const authority of ["strictest", "uk", "us"] as const) {
      for (const dish of dishes) {
        for (const { code, text, authority: by } of cautionsOf(dish, foods, safety, authority)) {
          const told = CAUTION_WORDS_DE.tellCaution(code, text);
          expect(told).not.toBe(text);
          expect(figuresOf(told.replaceAll(",", "."))).toEqual(figuresOf(text));
          expect(CAUTION_WORDS_DE.tellAuthority(by)).not.toMatch(
            /\b(guidance|says|rule|from|practice|within|eaten|day)\b/,
          );
          seen.add(code);
        }
      }
    }
    expect(seen.size).toBeGreaterThan(10);
  });

  test.each([
    ["hot-holding", "Waits 25 min for the plate: kept covered at 63 °C or hotter."],
    ["thawed", "Thawed in the fridge, on a plate that holds the drip; used within 24 h of being thawed."],
    [
      "thaw-at-once",
      "In the fridge it takes about 24 h to thaw. Where it is still frozen, thaw it in the microwave, or in a tight bag in cold water that is changed every 30 min, never in the warm; then cook it at once. Or eat another dish.",
    ],
    ["re-heat-times", "Heated again 2 times at most."],
    ["core-temperature", "Cuts of meat: 62.8 °C in the middle, held for 1 min 30 s, then a rest of 3 min."],
  ])("tell the figures of %s", (code, text) => {
    const told = CAUTION_WORDS_DE.tellCaution(code, text);
    expect(told).not.toBe(text);
    expect(figuresOf(told.replaceAll(",", "."))).toEqual(figuresOf(text));
  });

  test("leave what they do not know as it stands, so that no figure is lost", () => {
    for (const [code, text] of [
      ["dish", "No honey for children under one year."],
      ["core-temperature", "Snails: 70 °C in the middle."],
      ["room-time", "Be quick."],
    ] as const)
      expect(CAUTION_WORDS_DE.tellCaution(code, text)).toBe(text);
  });
});

/** The numbers in a text, in their order but for where they stand. */
function figuresOf(text: string): string[] {
  return (text.match(/\d+(?:\.\d+)?/g) ?? []).toSorted();
}
