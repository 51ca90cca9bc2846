import { GivenName } from "@halfloaf/keep/sync";
import { type Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import * as v from "valibot";
import { Allowances } from "../Allowance.ts";
import { isFault } from "../host/HostStore.ts";
import { isSecret, splitCredential } from "../secrets.ts";
import { type ApiContext, type ApiDesk, tellPath } from "./ApiDesk.ts";
import { addCalendarFiles, addCalendars } from "./addCalendars.ts";
import { addDevices } from "./addDevices.ts";
import { addInvitations } from "./addInvitations.ts";
import { addJoining } from "./addJoining.ts";
import { addKitchen } from "./addKitchen.ts";

/**
 * What is done to a kitchen besides its rows: made, shared, left, taken home, deleted. A device shows itself by its credential
 * in the `Authorization` header; no cookie is ever set, so no other page can ask in its name.
 */
export function createApi(desk: ApiDesk): Hono<ApiContext> {
  const { limits, now } = desk.parts;
  const requests = new Allowances(limits.requests);
  const api = new Hono<ApiContext>();
  api.use(async (context, next) => {
    await next();
    context.header("Cache-Control", "no-store");
    // A page that is led here shows nothing of it.
    if (!context.res.headers.has("Content-Disposition"))
      context.header("Content-Disposition", 'attachment; filename="answer.json"');
  });
  api.use(async (context, next) => {
    const isTooMuch = !requests.take(desk.addressOf(context), now());
    return isTooMuch ? desk.refuse(context, 429, "too-many-requests") : next();
  });
  api.use(async (context, next) => {
    const type = context.req.header("Content-Type")?.split(";")[0]?.trim().toLowerCase();
    const hasBody = ["POST", "PUT"].includes(context.req.method);
    return hasBody && type !== "application/json" ? desk.refuse(context, 415, "not-json") : next();
  });
  api.use(bodyLimit({ maxSize: limits.requestBytes, onError: (context) => desk.refuse(context, 413, "too-large") }));
  addJoining(api, desk);
  addCalendarFiles(api, desk);
  api.use("/kitchens/:kitchen/*", (context, next) => authenticate(desk, context, next));
  addKitchen(api, desk);
  addDevices(api, desk);
  addInvitations(api, desk);
  addCalendars(api, desk);
  api.all("*", (context) => desk.refuse(context, 404, "missing"));
  return api;
}

/** Lets on who shows the credential of a device of the kitchen that is asked about. */
async function authenticate(desk: ApiDesk, context: Context<ApiContext>, next: () => Promise<void>) {
  const [, credential = ""] = /^Bearer ([A-Za-z0-9._-]{1,200})$/.exec(context.req.header("Authorization") ?? "") ?? [];
  const { name, secret } = splitCredential(credential);
  if (desk.isShut(context, name)) return desk.refuse(context, 429, "too-many-mistakes");
  const kitchen = context.req.param("kitchen") ?? "";
  const areNames = v.is(GivenName, name) && v.is(GivenName, kitchen);
  const device = areNames ? await desk.parts.store.findDevice(kitchen, name) : undefined;
  if (isFault(device)) return desk.fail(context, device);
  if (!isSecret(secret, device?.secretHash) || device === undefined) {
    return desk.refuseMistake(context, 401, "unknown", name);
  }
  const facts = { address: desk.addressOf(context), kitchen, device: device.id };
  desk.parts.journal.info({ ...facts, method: context.req.method, path: tellPath(context.req.path) }, "device-asked");
  context.set("device", device);
  return next();
}
