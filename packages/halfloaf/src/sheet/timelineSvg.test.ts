import { expect, test } from "vitest";
import type { TimelineRow, WorkSheet } from "../kitchen/index.ts";
import { letterOf, listTicks, type TimelineWords, timelineSvg } from "./timelineSvg.ts";

const rows: TimelineRow[] = [
  {
    kind: "hands",
    bars: [
      { startMinutes: 0, endMinutes: 8, dish: 0, label: "cut", fill: "full" },
      { startMinutes: 8, endMinutes: 20, dish: 0, label: "fry", fill: "eye" },
      { startMinutes: 10, endMinutes: 18, dish: 1, label: "boil", fill: "eye" },
      { startMinutes: 20, endMinutes: 23, label: "wash board", fill: "wash" },
    ],
  },
  { kind: "ring", number: 1, bars: [{ startMinutes: 8, endMinutes: 20, dish: 0, label: "fry", fill: "held" }] },
  { kind: "oven", bars: [{ startMinutes: 0, endMinutes: 12, label: "200 °C", fill: "warming" }] },
  { kind: "waiting", number: 2, bars: [{ startMinutes: 18, endMinutes: 24, dish: 1, label: "boil", fill: "waiting" }] },
];
const dish = (title: string): WorkSheet["dishes"][number] => ({
  dish: "one",
  title,
  portions: 2,
  readyMinutes: 24,
  waitMinutes: 0,
  isHot: true,
});
const sheet = { rows, serveMinutes: 24, dishes: [dish("Beans & <leeks>"), dish('Barley "plain"')] };
const words: TimelineWords = {
  title: "Order of work",
  description: "24 min from the first step to the plate.",
  rowName: ({ kind, number }) => (number === undefined ? kind : `${kind} ${number}`),
  barName: ({ label }) => label,
  tick: String,
  legend: {
    full: "both hands",
    eye: "an eye on it",
    held: "in use",
    wash: "washing up",
    warming: "oven warms up",
    waiting: "waits",
  },
};

test("the picture is as it was", async () => {
  await expect(timelineSvg(sheet, words)).toMatchFileSnapshot("./timeline.golden.svg");
});

test("it is the same each time, and has a title and a description to be read out", () => {
  const text = timelineSvg(sheet, words);
  expect(timelineSvg(sheet, words)).toBe(text);
  expect(text).toContain('role="img" aria-labelledby="hl-title hl-desc"');
  expect(text).toContain('<title id="hl-title">Order of work</title>');
  expect(text).toContain('<desc id="hl-desc">24 min');
});

test("what dishes are called can't break out of the text", () => {
  const text = timelineSvg({ ...sheet, dishes: [dish('</text><script>alert("x")</script>\u0000\ud800')] }, words);
  expect(text).toContain("&lt;/text&gt;&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt;\ufffd\ufffd");
  expect(text).not.toContain("<script");
});

test("it loads nothing, and every fill has a look of its own without colour", () => {
  const text = timelineSvg(sheet, words);
  expect(text.replace('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(/https?:|href|<image|<style|@import/);
  const looks = [...text.matchAll(/rx="3" fill="([^"]+)" stroke="#1f2933"( stroke-dasharray="[^"]+")?/g)].map(
    ([, fill, dash = ""]) => fill + dash,
  );
  expect(new Set(looks).size).toBe(Object.keys(words.legend).length);
});

test("bars that overlap stand below each other", () => {
  const boxes = [
    ...timelineSvg(sheet, words).matchAll(/<g><title>[^<]*<\/title><rect x="([\d.]+)" y="(\d+)" width="([\d.]+)"/g),
  ];
  expect(boxes).toHaveLength(7);
  for (const [k, [, x, y, width]] of boxes.entries()) {
    for (const [, x2, y2, width2] of boxes.slice(k + 1)) {
      const apart =
        y !== y2 || Number(x) + Number(width) <= Number(x2) + 0.011 || Number(x2) + Number(width2) <= Number(x) + 0.011;
      expect(apart).toBe(true);
    }
  }
});

test("ticks are round on the clock where there is one", () => {
  expect(listTicks({ serveMinutes: 24 }, 10)).toEqual([0, 10, 20]);
  expect(listTicks({ serveMinutes: 24, serveAtMinutes: 19 * 60 }, 10)).toEqual([4, 14, 24]);
  expect(listTicks({ serveMinutes: 3, serveAtMinutes: 5 }, 10)).toEqual([]);
});

test("dishes go by letters, and by numbers where those run out", () => {
  expect([0, 1, 25, 26].map(letterOf)).toEqual(["A", "B", "Z", "27"]);
});
