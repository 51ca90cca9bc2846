import { type KeptKitchen, toBackup } from "@halfloaf/keep";
import type { CivilDate } from "halfloaf/quantity";
import { saveFile } from "../sheets/saveFile.ts";
import { newId } from "./newId.ts";

/** Hands the person everything of a kitchen as a file, named after the kitchen and the day. */
export function saveBackup(kept: KeptKitchen, title: string, day: CivilDate): void {
  saveFile(`${newId(title, [], "kitchen")}-${day}.json`, toBackup(kept, Date.now()), "application/json");
}
