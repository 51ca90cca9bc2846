import type { ComponentType } from "react";
import { lazily } from "../loading/lazily.ts";
import { loadSurely } from "../loading/loadSurely.ts";
import type { Words } from "../words/en.ts";
import type { FurtherPart } from "../words/further/Further.ts";
import { loadFurther } from "../words/furtherParts.ts";
import type { Language } from "../words/languages.ts";

/** A screen: where it is, what it is called, and how it is loaded. */
export interface Screen {
  readonly path: string;
  /** True where pages of single things stand below it. */
  readonly hasPages: boolean;
  readonly name: keyof Words["screens"];
  /** Shown along the foot of a narrow page; the others are behind "More". */
  readonly first: boolean;
  readonly Component: ComponentType;
  /** Loads its script; once is enough. */
  readonly load: () => Promise<unknown>;
  /** Texts that it says as soon as it shows, besides the common ones. */
  readonly texts: readonly FurtherPart[];
}

function screen(
  path: string,
  name: Screen["name"],
  first: boolean,
  load: () => Promise<{ default: ComponentType }>,
  texts: readonly FurtherPart[],
  hasPages = false,
): Screen {
  return { path, name, first, hasPages, Component: lazily(load), load: () => loadSurely(load), texts };
}

/** The screens in the order in which they stand. */
export const SCREENS: readonly Screen[] = [
  screen("/", "today", true, () => import("../today/TodayScreen.tsx"), ["today", "mended"]),
  screen("/menu", "menu", true, () => import("../menu/MenuScreen.tsx"), ["menu", "sheets"]),
  screen("/buying", "buying", true, () => import("../buying/BuyingScreen.tsx"), ["buying", "sharing"]),
  screen("/work", "work", true, () => import("../work/WorkScreen.tsx"), ["work"]),
  screen("/stores", "stores", false, () => import("../stores/StoresScreen.tsx"), ["stores"]),
  screen("/dishes", "dishes", false, () => import("../dishes/DishesScreen.tsx"), ["dishes"], true),
  screen("/prices", "prices", false, () => import("../prices/PricesScreen.tsx"), ["prices"], true),
  screen("/accounts", "accounts", false, () => import("../accounts/AccountsScreen.tsx"), ["accounts", "sheets"]),
  screen("/kitchen", "kitchen", false, () => import("../kitchen/KitchenScreen.tsx"), ["kitchen", "sharing"]),
];

/** Asks for all that the screen at an address shows at first, all at once and before it is drawn. */
export function loadAhead(location: string, language: Language): void {
  const screen = SCREENS.find((each) => isAt(each, location));
  if (screen === undefined) return;
  void screen.load();
  for (const part of ["common" as const, ...screen.texts]) void loadFurther(part, language);
}

/** True where an address is that of the screen, or of a page below it. */
export function isAt({ path, hasPages }: Screen, location: string): boolean {
  return location === path || (hasPages && location.startsWith(`${path}/`));
}
