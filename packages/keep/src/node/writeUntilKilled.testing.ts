import { openKitchenFolder } from "./openKitchenFolder.ts";

/** Writes purchases into the folder it is given and names each lot once it is told as kept, until it is killed. */
const [folder = "", start = "0"] = process.argv.slice(2);
const opened = await openKitchenFolder(folder, { foods: new Map(), device: "killed" });
if (!opened.ok) throw new Error(`${opened.reason}: ${opened.detail}`);
for (let number = Number(start); ; number++) {
  const lot = `lot-${number}`;
  const { kept } = await opened.kept.add([
    { kind: "bought", on: "2026-03-02", lot, food: "oats-rolled", place: "dry-store", massG: 500, costMinor: 85 },
  ]);
  if (kept.ok) process.stdout.write(`${lot}\n`);
}
