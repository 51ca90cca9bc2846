import { type ComponentType, lazy } from "react";
import type { Words } from "../words/en.ts";

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
}

function screen(
  path: string,
  name: Screen["name"],
  first: boolean,
  load: () => Promise<{ default: ComponentType }>,
  hasPages = false,
): Screen {
  return { path, name, first, hasPages, Component: lazy(load), load };
}

/** The screens in the order in which they stand. */
export const SCREENS: readonly Screen[] = [
  screen("/", "today", true, () => import("../today/TodayScreen.tsx")),
  screen("/menu", "menu", true, () => import("../menu/MenuScreen.tsx")),
  screen("/buying", "buying", true, () => import("../buying/BuyingScreen.tsx")),
  screen("/work", "work", true, () => import("../work/WorkScreen.tsx")),
  screen("/stores", "stores", false, () => import("../stores/StoresScreen.tsx")),
  screen("/dishes", "dishes", false, () => import("../dishes/DishesScreen.tsx"), true),
  screen("/prices", "prices", false, () => import("../prices/PricesScreen.tsx"), true),
  screen("/accounts", "accounts", false, () => import("../accounts/AccountsScreen.tsx")),
  screen("/kitchen", "kitchen", false, () => import("../kitchen/KitchenScreen.tsx")),
];

/** True where an address is that of the screen, or of a page below it. */
export function isAt({ path, hasPages }: Screen, location: string): boolean {
  return location === path || (hasPages && location.startsWith(`${path}/`));
}
