import type { Hono } from "hono";
import { isFault } from "../host/HostStore.ts";
import type { ApiContext, ApiDesk } from "./ApiDesk.ts";
import { readAllRows } from "./readAllRows.ts";
import { toExportText } from "./toExportText.ts";

/** What is done to a kitchen as a whole: looked at, taken home, deleted. */
export function addKitchen(api: Hono<ApiContext>, desk: ApiDesk): void {
  const { store, limits, journal, now } = desk.parts;

  api.get("/kitchens/:kitchen", async (context) => {
    const { kitchen, id, role } = context.get("device");
    const found = await store.findKitchen(kitchen);
    if (isFault(found)) return desk.fail(context, found);
    if (found === undefined) return desk.refuse(context, 404, "missing");
    const room = { mostRows: limits.kitchenRows, mostBytes: limits.kitchenBytes };
    return context.json({ kitchen, device: id, role, rows: found.upTo, bytes: found.bytes, ...room });
  });

  api.delete("/kitchens/:kitchen", async (context) => {
    const { kitchen, id } = context.get("device");
    if (!desk.isKeeper(context)) return desk.refuse(context, 403, "role");
    const deleted = await store.deleteKitchen(kitchen);
    if (isFault(deleted)) return desk.fail(context, deleted);
    journal.info({ kitchen, device: id }, "kitchen-deleted");
    desk.hub.endDevice(kitchen);
    return context.body(null, 204);
  });

  api.get("/kitchens/:kitchen/export", async (context) => {
    const { kitchen } = context.get("device");
    const rows = await readAllRows(store, kitchen);
    if (isFault(rows)) return desk.fail(context, rows);
    context.header("Content-Disposition", `attachment; filename="kitchen-${kitchen}.json"`);
    context.header("Content-Type", "application/json");
    return context.body(toExportText(rows, now()));
  });
}
