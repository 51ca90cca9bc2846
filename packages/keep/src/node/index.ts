export { isKitchenFolder, type OpenedFolder, openKitchenFolder, type Repair } from "./openKitchenFolder.ts";
export { writeWhole } from "./snapshots.ts";
