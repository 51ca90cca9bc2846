import fc from "fast-check";
import { parseFragment } from "parse5";
import { expect, test } from "vitest";
import type { AccountLine, PriceHistory } from "../../kitchen/record/index.ts";
import { layRibbons } from "../ribbons/layRibbons.ts";
import { findWeek } from "../sheet.testing.ts";
import { accountsSvg } from "./accountsSvg.ts";
import { frontierSvg } from "./frontierSvg.ts";
import { niceTicks } from "./niceTicks.ts";
import { priceHistorySvg } from "./priceHistorySvg.ts";
import { ribbonsSvg } from "./ribbonsSvg.ts";

const EVIL = `<script>alert("x")</script> & 'שלום'`;
const figures = {
  money: (minor: number) => (minor / 100).toFixed(2),
  mass: (massG: number) => `${Math.round(massG)} g`,
  dayShort: (date: string) => date,
  sitting: (kind: string) => kind,
};
const told = { title: EVIL, description: EVIL };

/** Nodes of a picture, all the way down. */
function nodesOf(svg: string) {
  type Node = { nodeName: string; childNodes?: Node[]; attrs?: { name: string; value: string }[]; value?: string };
  const all = (node: Node): Node[] => [node, ...(node.childNodes ?? []).flatMap(all)];
  return all(parseFragment(svg) as unknown as Node);
}

function expectSound(svg: string): void {
  const nodes = nodesOf(svg);
  expect(nodes.filter(({ nodeName }) => nodeName === "script")).toEqual([]);
  expect(svg).not.toMatch(/NaN|Infinity|undefined|href/);
  for (const name of ["title", "desc"]) {
    const [own] = nodes.filter(({ nodeName }) => nodeName === name);
    expect(own?.childNodes?.[0]?.value).toBe(EVIL);
  }
  const ids = nodes.flatMap(({ attrs }) => (attrs ?? []).filter(({ name }) => name === "id").map(({ value }) => value));
  expect(new Set(ids).size).toBe(ids.length);
}

test("ribbons: one bead for each cooking that takes of a pack, and every lot with a ribbon is named", () => {
  const { week, tables } = findWeek("one-ring");
  const end = (how: string, rest: string) => `${how} ${rest}`;
  const kind = { dry: "dry", fresh: "fresh", dairy: "dairy", protein: "protein", fat: "fat", other: "other" };
  const svg = ribbonsSvg(week, tables.foods, { food: () => EVIL }, { ...told, end, kind }, figures);
  expectSound(svg);
  const { ribbons } = layRibbons(week, tables.foods);
  expect(nodesOf(svg).filter(({ nodeName }) => nodeName === "g")).toHaveLength(ribbons.length + 1);
  expect([...svg.matchAll(/<circle[^>]*r="5"/g)]).toHaveLength(ribbons.flatMap(({ beads }) => beads).length);
});

test("a frontier has a point for each plan, and dearer plans stand further across", () => {
  const point = fc.record({
    moneyMinor: fc.integer({ min: -2000, max: 90_000 }),
    other: fc.integer({ min: 0, max: 900 }),
  });
  const words = { ...told, money: "money", other: "minutes", tellOther: String };
  fc.assert(
    fc.property(fc.array(point, { maxLength: 8 }), (points) => {
      const svg = frontierSvg(
        points.map((one) => ({ ...one, label: EVIL })),
        "EUR",
        words,
        figures,
      );
      expectSound(svg);
      const across = [...svg.matchAll(/<circle cx="([^"]+)"[^>]*r="5"/g)].map((found) => Number(found[1]));
      expect(across).toHaveLength(points.length);
      expect(across).toEqual([...across].sort((a, b) => a - b));
    }),
    { endOnFailure: true, numRuns: 60 },
  );
});

test("prices: a sign for each look and one in the legend; what has no unit price is not drawn", () => {
  const point = (on: string, perKgMinor?: number) => ({
    on,
    priceMinor: 100,
    ...(perKgMinor !== undefined && { perKgMinor }),
  });
  const history = (points: PriceHistory["points"]): PriceHistory => ({
    food: "f",
    shop: "s",
    pack: "p",
    label: EVIL,
    points,
  });
  const histories = [history([point("2026-01-01", 200), point("2026-03-01", 240)]), history([point("2026-02-01")])];
  const words = { ...told, perKg: "a kg", day: "day", line: () => EVIL };
  const svg = priceHistorySvg(histories, "EUR", words, figures);
  expectSound(svg);
  expect([...svg.matchAll(/<circle[^>]*r="4"/g)]).toHaveLength(3);
  expectSound(priceHistorySvg([], "EUR", words, figures));
});

test("accounts: a bar for each sum above nothing", () => {
  const line = { name: EVIL, tillMinor: 500, platesMinor: 300, wasteMinor: 0 } as AccountLine;
  const bar = { planned: "planned", spent: "spent", eaten: "eaten", wasted: "wasted" };
  const svg = accountsSvg([line, line], "EUR", { ...told, money: "EUR", days: "days", bar }, figures);
  expectSound(svg);
  expect([...svg.matchAll(/<rect [^>]*width="17"/g)]).toHaveLength(4);
});

test("ticks are round, go up by one step and hold all values", () => {
  const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(value, value, (a, b) => {
      const [least, most] = [Math.min(a, b), Math.max(a, b)];
      fc.pre(most - least > 1e-6);
      const ticks = niceTicks(least, most);
      const slack = (most - least) * 1e-6;
      expect(ticks[0]).toBeLessThanOrEqual(least + slack);
      expect(ticks.at(-1)).toBeGreaterThanOrEqual(most - slack);
      expect(ticks.length).toBeLessThanOrEqual(9);
    }),
    { endOnFailure: true },
  );
});
