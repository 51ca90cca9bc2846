import type { Hono } from "hono";
import { isFault } from "../host/HostStore.ts";
import type { ApiContext, ApiDesk } from "./ApiDesk.ts";
import { toExportText } from "./toExportText.ts";

/** Bytes of a log that are read at once for an export. */
const PAGE_BYTES = 1_000_000;

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
    const rows: string[] = [];
    for (let after = 0, end = 1; after < end; ) {
      const page = await store.readLog(kitchen, after, PAGE_BYTES);
      if (isFault(page)) return desk.fail(context, page);
      rows.push(...page.rows.map(({ text }) => text));
      after = page.rows.at(-1)?.seq ?? page.upTo;
      end = page.upTo;
    }
    context.header("Content-Disposition", `attachment; filename="kitchen-${kitchen}.json"`);
    context.header("Content-Type", "application/json");
    return context.body(toExportText(rows, now()));
  });
}
