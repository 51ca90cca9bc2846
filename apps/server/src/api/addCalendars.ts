import { createHash } from "node:crypto";
import { GivenName } from "@halfloaf/keep/sync";
import type { Hono } from "hono";
import * as v from "valibot";
import { CalendarDrawer } from "../calendar/CalendarDrawer.ts";
import { Manner } from "../calendar/Manner.ts";
import { type HostedCalendar, isFault } from "../host/HostStore.ts";
import { hashSecret, isSecret, makeName, makeSecret, splitCredential } from "../secrets.ts";
import { type ApiContext, type ApiDesk, readBody } from "./ApiDesk.ts";
import { readAllRows } from "./readAllRows.ts";

/** To the hour is close enough for when one was asked for last. */
const HOUR_MS = 3_600_000;

/** Addresses of calendars: made by any device for as long as it stays, listed, revoked. */
export function addCalendars(api: Hono<ApiContext>, desk: ApiDesk): void {
  const { store, limits, journal, now } = desk.parts;

  api.post("/kitchens/:kitchen/calendars", async (context) => {
    const { kitchen, id: madeBy } = context.get("device");
    const manner = await readBody(context, Manner);
    if (manner === undefined) return desk.refuse(context, 400, "malformed");
    const [id, secret] = [makeName(), makeSecret()];
    const [secretHash, madeAtMs] = [hashSecret(secret), now()];
    const made = { id, kitchen, madeBy, secretHash, manner: JSON.stringify(manner), madeAtMs, seenAtMs: madeAtMs };
    const added = await store.calendars.add(made, limits.calendarsOfKitchen);
    if (isFault(added)) return desk.fail(context, added);
    if (added === "full") return desk.refuse(context, 409, "too-many-calendars");
    journal.info({ kitchen, calendar: id, by: madeBy }, "calendar-made");
    return context.json({ ...tellCalendar(made), code: `${id}.${secret}` }, 201);
  });

  api.get("/kitchens/:kitchen/calendars", async (context) => {
    const listed = await store.calendars.list(context.get("device").kitchen);
    if (isFault(listed)) return desk.fail(context, listed);
    return context.json({ calendars: listed.map(tellCalendar) });
  });

  api.delete("/kitchens/:kitchen/calendars/:calendar", async (context) => {
    const { kitchen, id: device } = context.get("device");
    const name = context.req.param("calendar");
    const found = v.is(GivenName, name) ? await store.calendars.find(kitchen, name) : undefined;
    if (isFault(found)) return desk.fail(context, found);
    if (found === undefined) return desk.refuse(context, 404, "missing");
    if (found.madeBy !== device && !desk.isKeeper(context)) return desk.refuse(context, 403, "role");
    const removed = await store.calendars.remove(kitchen, name);
    if (isFault(removed)) return desk.fail(context, removed);
    if (removed === "done") journal.info({ kitchen, calendar: name, by: device }, "calendar-revoked");
    return desk.tellChange(context, removed);
  });
}

/** What calendars ask for: no credential but the secret in the address, since they can show no other; and nothing but the plan. */
export function addCalendarFiles(api: Hono<ApiContext>, desk: ApiDesk): void {
  const { store, journal, now } = desk.parts;
  const drawer = new CalendarDrawer();
  desk.hub.onClose(() => drawer.close());

  api.get("/calendars/:kitchen/:file", async (context) => {
    const { kitchen, file } = context.req.param();
    const { name, secret } = splitCredential(file.replace(/\.ics$/, ""));
    if (desk.isShut(context, name)) return desk.refuse(context, 429, "too-many-mistakes");
    const areNames = v.is(GivenName, name) && v.is(GivenName, kitchen) && file.endsWith(".ics");
    const found = areNames ? await store.calendars.find(kitchen, name) : undefined;
    if (isFault(found)) return desk.fail(context, found);
    if (!isSecret(secret, found?.secretHash) || found === undefined)
      return desk.refuseMistake(context, 404, "missing", name);
    const hosted = await store.findKitchen(kitchen);
    if (isFault(hosted)) return desk.fail(context, hosted);
    journal.info({ address: desk.addressOf(context), kitchen, calendar: name }, "calendar-asked");
    if (now() - found.seenAtMs > HOUR_MS) void store.calendars.noteSeen(kitchen, name, now());
    const key = keyOf(found, `${hosted?.log} ${hosted?.upTo}`, now());
    const text = await drawer.draw(key, async () => {
      const rows = await readAllRows(store, kitchen);
      return isFault(rows) ? undefined : { rows, manner: JSON.parse(found.manner) as Manner, nowMs: now() };
    });
    if (text === undefined) return desk.fail(context, { ok: false, reason: "busy", detail: "no calendar was drawn" });
    context.header("Content-Type", "text/calendar; charset=utf-8");
    context.header("Content-Disposition", 'attachment; filename="kitchen.ics"');
    return context.body(text);
  });
}

/** The same for as long as what would be drawn is: the log, the manner, and the day by UTC. */
function keyOf({ kitchen, manner }: HostedCalendar, log: string, nowMs: number): string {
  const day = new Date(nowMs).toISOString().slice(0, 13);
  return createHash("sha256")
    .update(JSON.stringify([kitchen, log, manner, day]))
    .digest("base64");
}

function tellCalendar({ id, madeBy, madeAtMs, seenAtMs, manner }: HostedCalendar) {
  const { language, zone } = JSON.parse(manner) as Manner;
  return { calendar: id, madeBy, language, zone, madeAtMs, seenAtMs };
}
