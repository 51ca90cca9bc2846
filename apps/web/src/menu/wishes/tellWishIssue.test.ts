import { Wish } from "halfloaf/kitchen";
import { parseWith } from "halfloaf/quantity";
import { expect, test } from "vitest";
import { furtherEn } from "../../words/further/en.ts";
import { tellWishIssue } from "./tellWishIssue.ts";
import { FRESH, fromWishDraft, toWishDraft, type WishDraft } from "./WishDraft.ts";

const { issues } = furtherEn.wishes;
const soup: WishDraft = { ...FRESH, what: { manner: "soup" } };

/** All that is told of a wish which is the second of its kitchen. */
function tell(draft: WishDraft): (string | undefined)[] {
  const read = parseWith(Wish, fromWishDraft(draft));
  if (read.ok) return [];
  return read.issues.map((issue) => tellWishIssue({ ...issue, path: ["wishes", 1, ...issue.path] }, furtherEn));
}

test("what a wish lacks is told by what is to be said in its form", () => {
  expect(tell(FRESH)).toEqual([issues.what]);
  expect(tell({ ...soup, least: undefined })).toEqual([issues.often]);
  expect(tell({ ...soup, least: 3, most: 2 })).toEqual([issues.order]);
  expect(tell({ ...soup, least: 1.5 })).toEqual([issues.times]);
  expect(tell({ ...soup, isMust: false })).toEqual([issues.price]);
  expect(tell(soup)).toEqual([]);
});

test("a wish that was opened and saved as it was stays as it was", () => {
  const wishes: Wish[] = [
    { what: { manner: "soup", hygiene: "cooked" }, least: 1, most: 4, missMinor: 150 },
    { what: { dish: "oat-soup" }, on: [1, 5], at: ["evening"], eaters: ["ada"], most: 0 },
  ];
  for (const wish of wishes) expect(fromWishDraft(toWishDraft(wish))).toEqual(wish);
});
