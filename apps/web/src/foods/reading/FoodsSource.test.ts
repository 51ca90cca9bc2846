import { describe, expect, test } from "vitest";
import { sortFiles, sortText } from "./FoodsSource.ts";

const file = (name: string, text: string): File => new File([text], name);
const OWN = JSON.stringify({ format: "halfloaf-foods", version: 1, foods: [] });

describe("what is given to be read is known by what stands in it", () => {
  test("as text: own foods, a table, a download, or nothing of these", () => {
    expect(sortText(OWN)).toMatchObject({ kind: "own" });
    expect(sortText("No.;Food\n1;Kelp", "board.csv")).toEqual({
      kind: "table",
      text: "No.;Food\n1;Kelp",
      name: "board",
    });
    expect(sortText('{"SRLegacyFoods": []}').kind).toBe("json");
    expect(sortText('"fdc_id","data_type","description"\n').kind).toBe("download-part");
    expect(sortText('{"format": "halfloaf-kitchen"}').kind).toBe("not-one");
    expect(sortText('{"format": "halfloaf-foods"').kind).toBe("json-broken");
  });

  test("as files: a download whole, a part of it, or one file whatever it is called and encoded", async () => {
    const names = ["food.csv", "nutrient.csv", "food_nutrient.csv"];
    const whole = names.map((name) => file(name, "fdc_id\n"));
    expect(await sortFiles(whole)).toEqual({ kind: "csv", files: whole });
    expect((await sortFiles(whole.slice(0, 2))).kind).toBe("download-part");
    expect(await sortFiles([file("a.txt", OWN)])).toMatchObject({ kind: "own" });
    const western = new File([new Uint8Array([0x4b, 0xe4, 0x73, 0x65, 0x3b, 0x31])], "cheese.csv");
    expect(await sortFiles([western])).toEqual({ kind: "table", text: "Käse;1", name: "cheese" });
    expect((await sortFiles([file("legacy.json", '{"SRLegacyFoods": [')])).kind).toBe("json");
  });
});
