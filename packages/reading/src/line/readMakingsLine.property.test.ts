import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cleanText } from "./cleanText.ts";
import type { ReadLine } from "./makingsLine.ts";
import { readMakingsLine } from "./readMakingsLine.ts";
import { toAmount } from "./toAmount.ts";
import type { Told } from "./told.ts";
import { UNIT_WORDS, type UnitWord } from "./unitWords.ts";

const FOODS = ["onions", "olive oil", "plain flour", "red lentils", "soy sauce", "chicken stock", "frozen peas"];
const food = fc.constantFrom(...FOODS);
const SPICED = [
  "1",
  "½",
  "1/2",
  "a",
  "g",
  "oz",
  "cup",
  "tin",
  "(",
  ")",
  ",",
  "/",
  "-",
  "–",
  "or",
  "and",
  "to",
  "x",
  "for",
  "of",
];

/** Words of the kitchen and arbitrary text in any order, as hostile and as likely as can be. */
const anyLine = fc.oneof(
  fc.string({ unit: "binary", maxLength: 60 }),
  fc
    .array(
      fc.oneof(
        fc.constantFrom(...SPICED, ...FOODS, "<b>", "\u200b", "\u202e", "__proto__"),
        fc.string({ maxLength: 4 }),
      ),
      {
        maxLength: 30,
      },
    )
    .map((words) => words.join(" ")),
);

/** Every told piece of a reading. */
function toldOf(read: ReadLine): Told[] {
  if (read.kind !== "making") return read.kind === "heading" ? [read.heading] : [];
  const pieces = [read.purpose, read.optional, read.toTaste, read.heading, ...read.preparation, ...read.notes];
  const ofChoices = read.choices.flatMap(({ size, part, name, states }) => [size, part, name, ...states]);
  return [...pieces, ...ofChoices].filter((piece) => piece !== undefined);
}

describe("readMakingsLine, whatever the line", () => {
  it("answers, and every span lies in the line and begins and ends with the words told", () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const read = readMakingsLine(line);
        for (const { text, span } of toldOf(read)) {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.start).toBeLessThan(span.end);
          expect(span.end).toBeLessThanOrEqual(line.length);
          // What stands between the span's ends reads, by itself, as the words told, with those left out between them.
          const words = cleanText(line.slice(span.start, span.end)).text.replace(/\s+/g, " ").trim();
          expect(words.startsWith(text.slice(0, 1))).toBe(true);
          expect(words.endsWith(text.slice(-1))).toBe(true);
        }
      }),
      { endOnFailure: true },
    );
  });

  it("gives only amounts above zero, and all finite", () => {
    fc.assert(
      fc.property(anyLine, fc.constantFrom("british" as const, "american" as const), (line, english) => {
        const read = readMakingsLine(line);
        if (read.kind !== "making") return;
        for (const choice of read.choices) {
          const { amount } = toAmount(read, choice, english);
          if (amount === undefined || amount === "to-taste") continue;
          const numbers = "value" in amount ? [amount.value] : [amount.from, amount.to];
          for (const number of numbers) {
            expect(number).toBeGreaterThan(0);
            expect(Number.isFinite(number)).toBe(true);
          }
        }
      }),
      { endOnFailure: true },
    );
  });

  it("passes on no invisible character, no markup, and touches no prototype", () => {
    fc.assert(
      fc.property(anyLine, (line) => {
        const read = readMakingsLine(line);
        for (const { text } of toldOf(read)) expect(text).not.toMatch(/\p{Cf}|\p{Cc}|[<>]/u);
        expect(Object.keys(Object.prototype)).toEqual([]);
      }),
      { endOnFailure: true },
    );
  });

  it("reads the same with invisible characters strewn in", () => {
    const invisible = fc.constantFrom("\u200b", "\u200d", "\u202e", "\u2066", "\u00ad", "\ufeff");
    fc.assert(
      fc.property(food, fc.array(fc.tuple(fc.nat(40), invisible), { maxLength: 8 }), (name, strewn) => {
        const line = `1 1/2 cups ${name}, finely chopped`;
        const dirty = strewn.reduce((text, [at, mark]) => text.slice(0, at) + mark + text.slice(at), line);
        expect(withoutSpans(readMakingsLine(dirty))).toEqual(withoutSpans(readMakingsLine(line)));
      }),
    );
  });

  it("stays linear on brackets, digits, slashes, tags and words without end", () => {
    for (const piece of [
      "(",
      "((()",
      "9",
      "1/",
      "1 ",
      "a ",
      "or ",
      "1 cup or ",
      "<",
      "<a",
      "- ",
      "half a ",
      "1 x ",
      "½",
    ]) {
      expect(readMakingsLine(piece.repeat(1_000_000 / piece.length)).issues).toHaveLength(1);
    }
  });
});

const withoutSpans = (read: ReadLine): unknown =>
  JSON.parse(JSON.stringify(read, (key, value) => (key === "span" ? undefined : value)));

describe("readMakingsLine, lines written by rule", () => {
  const measured = fc.constantFrom(
    ...(Object.keys(UNIT_WORDS) as UnitWord[]).filter((unit) => ["mass", "volume"].includes(UNIT_WORDS[unit].kind)),
  );
  const count = fc.integer({ min: 1, max: 999 });

  it("gives back number, unit and name of every writing of a unit", () => {
    fc.assert(
      fc.property(count, measured, fc.nat(20), food, fc.boolean(), (value, unit, form, name, glued) => {
        const { forms } = UNIT_WORDS[unit];
        const word = forms[form % forms.length] as string;
        const read = readMakingsLine(`${value}${glued ? "" : " "}${word} ${name}`);
        expect(read).toMatchObject({ kind: "making", choices: [{ amount: { told: [{ parts: [{ value, unit }] }] } }] });
        const choice = read.kind === "making" ? read.choices[0] : undefined;
        expect([...(choice?.states ?? []), choice?.name].map((told) => told?.text).join(" ")).toBe(name);
      }),
    );
  });

  it("gives back ranges in every writing, low before high", () => {
    const joint = fc.constantFrom("-", " - ", "–", " –", " to ", " or ");
    fc.assert(
      fc.property(count, count, joint, food, (low, more, to, name) => {
        const read = readMakingsLine(`${low}${to}${low + more} ml ${name}`);
        const unit = "millilitre";
        const measure = { parts: [{ value: low, unit }], upTo: [{ value: low + more, unit }] };
        expect(read).toMatchObject({ kind: "making", choices: [{ amount: { told: [measure] } }] });
      }),
    );
  });

  it("gives back mixed numbers with every vulgar fraction of Unicode", () => {
    const vulgar = [..."¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞"];
    const worth = (mark: string) => {
      const [above, below] = mark.normalize("NFKC").split("⁄").map(Number) as [number, number];
      return above / below;
    };
    fc.assert(
      fc.property(fc.nat(20), fc.constantFrom(...vulgar), fc.constantFrom("", " "), (whole, mark, space) => {
        const read = readMakingsLine(`${whole === 0 ? "" : whole}${space}${mark} cups rice`);
        const value = read.kind === "making" ? read.choices[0].amount?.told[0]?.parts[0]?.value : undefined;
        expect(value).toBeCloseTo(whole + worth(mark), 9);
      }),
    );
  });
});
