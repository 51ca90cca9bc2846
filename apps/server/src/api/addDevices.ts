import { GivenName } from "@halfloaf/keep/sync";
import type { Hono } from "hono";
import * as v from "valibot";
import { type HostedDevice, isFault } from "../host/HostStore.ts";
import { type ApiContext, type ApiDesk, readBody } from "./ApiDesk.ts";
import { NewRole } from "./requests.ts";

/** Devices of a kitchen: listed, removed, given another role. */
export function addDevices(api: Hono<ApiContext>, desk: ApiDesk): void {
  const { store, journal } = desk.parts;

  api.get("/kitchens/:kitchen/devices", async (context) => {
    const devices = await store.listDevices(context.get("device").kitchen);
    if (isFault(devices)) return desk.fail(context, devices);
    return context.json({ devices: devices.map(tellDevice) });
  });

  api.delete("/kitchens/:kitchen/devices/:device", async (context) => {
    const { kitchen, id } = context.get("device");
    const name = context.req.param("device");
    if (name !== id && !desk.isKeeper(context)) return desk.refuse(context, 403, "role");
    const removed = v.is(GivenName, name) ? await store.removeDevice(kitchen, name) : "missing";
    if (isFault(removed)) return desk.fail(context, removed);
    if (removed === "done") {
      journal.info({ kitchen, device: name, by: id }, "device-removed");
      desk.hub.endDevice(kitchen, name);
    }
    return desk.tellChange(context, removed);
  });

  api.put("/kitchens/:kitchen/devices/:device/role", async (context) => {
    const { kitchen, id } = context.get("device");
    const name = context.req.param("device");
    if (!desk.isKeeper(context)) return desk.refuse(context, 403, "role");
    const read = await readBody(context, NewRole);
    if (read === undefined) return desk.refuse(context, 400, "malformed");
    const changed = v.is(GivenName, name) ? await store.changeRole(kitchen, name, read.role) : "missing";
    if (isFault(changed)) return desk.fail(context, changed);
    if (changed === "done") {
      journal.info({ kitchen, device: name, role: read.role, by: id }, "role-changed");
      desk.hub.endDevice(kitchen, name);
    }
    return desk.tellChange(context, changed);
  });
}

function tellDevice({ id, name, role, madeAtMs, seenAtMs }: HostedDevice) {
  return { device: id, name, role, madeAtMs, seenAtMs };
}
