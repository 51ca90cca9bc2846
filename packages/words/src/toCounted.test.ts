import { describe, expect, test } from "vitest";
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

  test("is told with as many decimals as it is shown with", () => {
    const forms = { one: "one", other: "other" };
    expect([1.04, 1.004].map((count) => toCounted("en", 2)(count, forms))).toEqual(["other", "one"]);
  });

  test("falls back to the last form where a language has more of them", () => {
    expect(toCounted("pl")(3, { one: "one", other: "other" })).toBe("other");
  });
});
