import { mayWrite } from "@halfloaf/keep/sync";
import type { Guard } from "../kitchen/KitchenSession.ts";
import { readShared } from "./shared.ts";

/** Holds what is written into the kitchen of that database against the role that its server gave this device last. */
export function guardOf(id: string): Guard {
  return (row, isOwn) => {
    const role = readShared(id)?.role;
    return role === undefined || mayWrite(role, row, isOwn);
  };
}
