import { type KeptKitchen, toBackup } from "@halfloaf/keep";
import type { CivilDate } from "halfloaf/quantity";
import { newId } from "./newId.ts";

/** The browser needs the address of a file until it has begun to save it. */
const SAVING_MS = 60_000;

/** Hands the person everything of a kitchen as a file, named after the kitchen and the day. */
export function saveBackup(kept: KeptKitchen, title: string, day: CivilDate): void {
  const url = URL.createObjectURL(new Blob([toBackup(kept, Date.now())], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = url;
  link.download = `${newId(title, [], "kitchen")}-${day}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), SAVING_MS);
}
