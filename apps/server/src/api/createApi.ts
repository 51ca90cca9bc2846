import type { StoreFault } from "@halfloaf/keep";
import { GivenName } from "@halfloaf/keep/sync";
import type { HttpBindings } from "@hono/node-server";
import { type Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import * as v from "valibot";
import { Allowances } from "../Allowance.ts";
import { type HostedDevice, type HostedInvitation, isFault } from "../host/HostStore.ts";
import type { ServerParts } from "../ServerParts.ts";
import { hashSecret, isSecret, makeName, makeSecret, splitCredential } from "../secrets.ts";
import type { SyncHub } from "../sync/SyncHub.ts";
import { addressOf } from "./addressOf.ts";
import { Joining, NewInvitation, NewKitchen, NewRole } from "./requests.ts";
import { toExportText } from "./toExportText.ts";

/** Who may make new kitchens: everybody, who knows the code, or nobody. */
export type Registration = { readonly kind: "open" | "closed" } | { readonly kind: "code"; readonly code: string };

export interface ApiOptions {
  readonly registration: Registration;
  readonly trustedProxies: number;
}

interface ApiContext {
  Bindings: HttpBindings;
  Variables: { device: HostedDevice };
}

/** Bytes of a log that are read at once for an export. */
const PAGE_BYTES = 1_000_000;

/**
 * What is done to a kitchen besides its rows: made, shared, left, taken home, deleted. A device shows itself by its credential
 * in the `Authorization` header; no cookie is ever set, so no other page can ask in its name.
 */
export function createApi(parts: ServerParts, hub: SyncHub, options: ApiOptions): Hono<ApiContext> {
  const { store, limits, journal, now } = parts;
  const requests = new Allowances(limits.requests);
  const kitchens = new Allowances(limits.kitchens);
  const api = new Hono<ApiContext>();
  const askedFrom = (context: Context<ApiContext>) => addressOf(context.env.incoming, options.trustedProxies);

  const refuse = (context: Context<ApiContext>, status: 400 | 401 | 403 | 404 | 409 | 429, reason: string) => {
    journal.warn({ address: askedFrom(context), path: context.req.path, reason }, "request-refused");
    if (status === 429) context.header("Retry-After", "60");
    return context.json({ reason }, status);
  };
  const fail = (context: Context<ApiContext>, fault: StoreFault) => {
    parts.measures.troubles.inc({ reason: fault.reason });
    journal.error({ reason: fault.reason, detail: fault.detail }, "store-trouble");
    context.header("Retry-After", "5");
    return context.json({ reason: "storage" }, 503);
  };

  api.use(async (context, next) => {
    await next();
    context.header("Cache-Control", "no-store");
  });
  api.use(async (context, next) => {
    if (!requests.take(askedFrom(context), now())) return refuse(context, 429, "too-many-requests");
    return next();
  });
  api.use(
    bodyLimit({ maxSize: limits.requestBytes, onError: (context) => context.json({ reason: "too-large" }, 413) }),
  );

  api.post("/kitchens", async (context) => {
    const read = await readBody(context, NewKitchen);
    if (read === undefined) return refuse(context, 400, "malformed");
    const { registration } = options;
    const isLetIn =
      registration.kind === "open" ||
      (registration.kind === "code" && isSecret(read.code ?? "", hashSecret(registration.code)));
    if (!isLetIn) return refuse(context, 403, registration.kind === "code" ? "code-needed" : "registration-closed");
    if (!kitchens.take(askedFrom(context), now())) return refuse(context, 429, "too-many-kitchens");
    const kitchen = makeName();
    const { device, credential } = makeDevice(kitchen, read.device, "keeper", now());
    const made = await store.makeKitchen({ id: kitchen, log: makeName() }, device);
    if (isFault(made)) return fail(context, made);
    journal.info({ kitchen, device: device.id }, "kitchen-made");
    return context.json({ kitchen, device: device.id, credential, role: device.role }, 201);
  });

  api.post("/join", async (context) => {
    const address = askedFrom(context);
    if (hub.mistakes.isSpent(address, now())) return refuse(context, 429, "too-many-mistakes");
    const read = await readBody(context, Joining);
    if (read === undefined) return refuse(context, 400, "malformed");
    const { name, secret } = splitCredential(read.code);
    const invitation = v.is(GivenName, name) ? await store.findInvitation(name) : undefined;
    if (isFault(invitation)) return fail(context, invitation);
    const isGenuine = isSecret(secret, invitation?.secretHash) && invitation?.kitchen === read.kitchen;
    if (!isGenuine || invitation === undefined) {
      hub.mistakes.take(address, now());
      return refuse(context, 403, "no-such-invitation");
    }
    const devices = await store.listDevices(invitation.kitchen);
    if (isFault(devices)) return fail(context, devices);
    if (devices.length >= limits.devicesOfKitchen) return refuse(context, 409, "too-many-devices");
    const { device, credential } = makeDevice(invitation.kitchen, read.device, invitation.role, now());
    const used = await store.useInvitation(invitation.id, device, now());
    if (isFault(used)) return fail(context, used);
    if (used === "spent") return refuse(context, 403, "no-such-invitation");
    journal.info({ kitchen: invitation.kitchen, device: device.id, role: device.role }, "device-joined");
    return context.json({ kitchen: invitation.kitchen, device: device.id, credential, role: device.role }, 201);
  });

  api.use("/kitchens/:kitchen/*", (context, next) => authenticate(context, next));
  api.use("/kitchens/:kitchen", (context, next) => authenticate(context, next));

  async function authenticate(context: Context<ApiContext>, next: () => Promise<void>) {
    const address = askedFrom(context);
    if (hub.mistakes.isSpent(address, now())) return refuse(context, 429, "too-many-mistakes");
    const [, credential = ""] =
      /^Bearer ([A-Za-z0-9._-]{1,200})$/.exec(context.req.header("Authorization") ?? "") ?? [];
    const { name, secret } = splitCredential(credential);
    const kitchen = context.req.param("kitchen") ?? "";
    const areNames = v.is(GivenName, name) && v.is(GivenName, kitchen);
    const device = areNames ? await store.findDevice(kitchen, name) : undefined;
    if (isFault(device)) return fail(context, device);
    if (!isSecret(secret, device?.secretHash) || device === undefined) {
      hub.mistakes.take(address, now());
      return refuse(context, 401, "unknown");
    }
    context.set("device", device);
    return next();
  }

  const isKeeper = (context: Context<ApiContext>) => context.get("device").role === "keeper";

  api.get("/kitchens/:kitchen", async (context) => {
    const { kitchen, id, role } = context.get("device");
    const found = await store.findKitchen(kitchen);
    if (isFault(found)) return fail(context, found);
    if (found === undefined) return refuse(context, 404, "missing");
    const room = { mostRows: limits.kitchenRows, mostBytes: limits.kitchenBytes };
    return context.json({ kitchen, device: id, role, rows: found.upTo, bytes: found.bytes, ...room });
  });

  api.delete("/kitchens/:kitchen", async (context) => {
    const { kitchen, id } = context.get("device");
    if (!isKeeper(context)) return refuse(context, 403, "role");
    const deleted = await store.deleteKitchen(kitchen);
    if (isFault(deleted)) return fail(context, deleted);
    journal.info({ kitchen, device: id }, "kitchen-deleted");
    hub.endDevice(kitchen);
    return context.body(null, 204);
  });

  api.get("/kitchens/:kitchen/export", async (context) => {
    const { kitchen } = context.get("device");
    const rows: string[] = [];
    for (let after = 0, end = 1; after < end; ) {
      const page = await store.readLog(kitchen, after, PAGE_BYTES);
      if (isFault(page)) return fail(context, page);
      rows.push(...page.rows.map(({ text }) => text));
      after = page.rows.at(-1)?.seq ?? page.upTo;
      end = page.upTo;
    }
    context.header("Content-Disposition", `attachment; filename="kitchen-${kitchen}.json"`);
    context.header("Content-Type", "application/json");
    return context.body(toExportText(rows, now()));
  });

  api.get("/kitchens/:kitchen/devices", async (context) => {
    const devices = await store.listDevices(context.get("device").kitchen);
    if (isFault(devices)) return fail(context, devices);
    return context.json({ devices: devices.map(tellDevice) });
  });

  api.delete("/kitchens/:kitchen/devices/:device", async (context) => {
    const { kitchen, id } = context.get("device");
    const name = context.req.param("device");
    if (name !== id && !isKeeper(context)) return refuse(context, 403, "role");
    const removed = v.is(GivenName, name) ? await store.removeDevice(kitchen, name) : "missing";
    if (isFault(removed)) return fail(context, removed);
    if (removed === "missing") return refuse(context, 404, "missing");
    if (removed === "last-keeper") return refuse(context, 409, "last-keeper");
    journal.info({ kitchen, device: name, by: id }, "device-removed");
    hub.endDevice(kitchen, name);
    return context.body(null, 204);
  });

  api.put("/kitchens/:kitchen/devices/:device/role", async (context) => {
    const { kitchen, id } = context.get("device");
    const name = context.req.param("device");
    if (!isKeeper(context)) return refuse(context, 403, "role");
    const read = await readBody(context, NewRole);
    if (read === undefined) return refuse(context, 400, "malformed");
    const changed = v.is(GivenName, name) ? await store.changeRole(kitchen, name, read.role) : "missing";
    if (isFault(changed)) return fail(context, changed);
    if (changed === "missing") return refuse(context, 404, "missing");
    if (changed === "last-keeper") return refuse(context, 409, "last-keeper");
    journal.info({ kitchen, device: name, role: read.role, by: id }, "role-changed");
    hub.endDevice(kitchen, name);
    return context.body(null, 204);
  });

  api.post("/kitchens/:kitchen/invitations", async (context) => {
    const { kitchen, id } = context.get("device");
    if (!isKeeper(context)) return refuse(context, 403, "role");
    const read = await readBody(context, NewInvitation);
    if (read === undefined) return refuse(context, 400, "malformed");
    const open = await store.listInvitations(kitchen, now());
    if (isFault(open)) return fail(context, open);
    if (open.length >= limits.invitationsOfKitchen) return refuse(context, 409, "too-many-invitations");
    const secret = makeSecret();
    const name = makeName();
    const expiresAtMs = Math.floor(now() + read.hours * 3_600_000);
    const secretHash = hashSecret(secret);
    const invitation: HostedInvitation = { id: name, kitchen, role: read.role, secretHash, madeBy: id, expiresAtMs };
    const added = await store.addInvitation(invitation, now());
    if (isFault(added)) return fail(context, added);
    journal.info({ kitchen, invitation: name, role: read.role, by: id }, "invitation-made");
    return context.json({ ...tellInvitation(invitation), code: `${name}.${secret}` }, 201);
  });

  api.get("/kitchens/:kitchen/invitations", async (context) => {
    if (!isKeeper(context)) return refuse(context, 403, "role");
    const open = await store.listInvitations(context.get("device").kitchen, now());
    if (isFault(open)) return fail(context, open);
    return context.json({ invitations: open.map(tellInvitation) });
  });

  api.delete("/kitchens/:kitchen/invitations/:invitation", async (context) => {
    const { kitchen, id } = context.get("device");
    if (!isKeeper(context)) return refuse(context, 403, "role");
    const name = context.req.param("invitation");
    const removed = v.is(GivenName, name) ? await store.removeInvitation(kitchen, name) : "missing";
    if (isFault(removed)) return fail(context, removed);
    if (removed === "missing") return refuse(context, 404, "missing");
    journal.info({ kitchen, invitation: name, by: id }, "invitation-revoked");
    return context.body(null, 204);
  });

  api.all("*", (context) => refuse(context, 404, "missing"));
  return api;
}

function makeDevice(kitchen: string, name: string, role: HostedDevice["role"], nowMs: number) {
  const secret = makeSecret();
  const id = makeName();
  const secretHash = hashSecret(secret);
  const device: HostedDevice = { id, kitchen, name, role, secretHash, madeAtMs: nowMs, seenAtMs: nowMs };
  return { device, credential: `${id}.${secret}` };
}

function tellDevice({ id, name, role, madeAtMs, seenAtMs }: HostedDevice) {
  return { device: id, name, role, madeAtMs, seenAtMs };
}

function tellInvitation({ id, role, madeBy, expiresAtMs }: HostedInvitation) {
  return { invitation: id, role, madeBy, expiresAtMs };
}

async function readBody<Schema extends v.GenericSchema>(
  context: Context<ApiContext>,
  schema: Schema,
): Promise<v.InferOutput<Schema> | undefined> {
  try {
    const read = v.safeParse(schema, await context.req.json());
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}
