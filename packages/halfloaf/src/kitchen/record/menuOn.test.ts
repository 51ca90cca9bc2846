import { expect, test } from "vitest";
import { addDays, type CivilDate } from "../../quantity/index.ts";
import { menuOn, menuToCome } from "./menuOn.ts";
import type { AcceptedMenu } from "./recordState.ts";

const TODAY = "2026-11-30" as CivilDate;
const menu = (event: string, inDays: number, on = TODAY): AcceptedMenu =>
  ({ event, on, week: { from: addDays(TODAY, inDays), days: 3 } }) as unknown as AcceptedMenu;

test("the menu to come is the one that begins next, as it was accepted last, whatever holds today", () => {
  const menus = [menu("now", -1), menu("far", 9), menu("next", 2), menu("next again", 2)];
  expect(menuOn({ menus }, TODAY)?.event).toBe("now");
  expect(menuToCome({ menus }, TODAY)?.event).toBe("next again");
  expect(menuToCome({ menus }, addDays(TODAY, 4))?.event).toBe("far");
  expect(menuToCome({ menus }, addDays(TODAY, 9))).toBeUndefined();
});
