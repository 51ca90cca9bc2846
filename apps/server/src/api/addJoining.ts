import { GivenName } from "@halfloaf/keep/sync";
import type { Hono } from "hono";
import * as v from "valibot";
import { Allowances } from "../Allowance.ts";
import { type HostedDevice, isFault } from "../host/HostStore.ts";
import { hashSecret, isSecret, makeName, makeSecret, splitCredential } from "../secrets.ts";
import { type ApiContext, type ApiDesk, readBody } from "./ApiDesk.ts";
import { Joining, NewKitchen } from "./requests.ts";

/** What wrong codes of registration are counted under: no name that the server gives has an upper case letter. */
const REGISTRATION = "Registration";

/** What needs no credential and gives one: a new kitchen, and coming in by an invitation. */
export function addJoining(api: Hono<ApiContext>, desk: ApiDesk): void {
  const { store, limits, journal, now } = desk.parts;
  const kitchens = new Allowances(limits.kitchens);

  api.post("/kitchens", async (context) => {
    const read = await readBody(context, NewKitchen);
    if (read === undefined) return desk.refuse(context, 400, "malformed");
    const { registration } = desk.options;
    if (desk.isShut(context, REGISTRATION)) return desk.refuse(context, 429, "too-many-mistakes");
    const isLetIn =
      registration.kind === "open" ||
      (registration.kind === "code" && isSecret(read.code ?? "", hashSecret(registration.code)));
    if (!isLetIn && registration.kind === "closed") return desk.refuse(context, 403, "registration-closed");
    if (!isLetIn) return desk.refuseMistake(context, 403, "code-needed", REGISTRATION);
    if (!kitchens.take(desk.addressOf(context), now())) return desk.refuse(context, 429, "too-many-kitchens");
    const kitchen = makeName();
    const { device, credential } = makeDevice(kitchen, read.device, "keeper", now());
    const made = await store.makeKitchen({ id: kitchen, log: makeName() }, device);
    if (isFault(made)) return desk.fail(context, made);
    journal.info({ kitchen, device: device.id }, "kitchen-made");
    return context.json({ kitchen, device: device.id, credential, role: device.role }, 201);
  });

  api.post("/join", async (context) => {
    const read = await readBody(context, Joining);
    if (read === undefined) return desk.refuse(context, 400, "malformed");
    const { name, secret } = splitCredential(read.code);
    if (desk.isShut(context, name)) return desk.refuse(context, 429, "too-many-mistakes");
    const invitation = v.is(GivenName, name) ? await store.findInvitation(name) : undefined;
    if (isFault(invitation)) return desk.fail(context, invitation);
    const isGenuine = isSecret(secret, invitation?.secretHash) && invitation?.kitchen === read.kitchen;
    if (!isGenuine || invitation === undefined) return desk.refuseMistake(context, 403, "no-such-invitation", name);
    const devices = await store.listDevices(invitation.kitchen);
    if (isFault(devices)) return desk.fail(context, devices);
    if (devices.length >= limits.devicesOfKitchen) return desk.refuse(context, 409, "too-many-devices");
    const { device, credential } = makeDevice(invitation.kitchen, read.device, invitation.role, now());
    const used = await store.useInvitation(invitation.id, device, now());
    if (isFault(used)) return desk.fail(context, used);
    if (used === "spent") return desk.refuse(context, 403, "no-such-invitation");
    journal.info({ kitchen: invitation.kitchen, device: device.id, role: device.role }, "device-joined");
    return context.json({ kitchen: invitation.kitchen, device: device.id, credential, role: device.role }, 201);
  });
}

function makeDevice(kitchen: string, name: string, role: HostedDevice["role"], nowMs: number) {
  const secret = makeSecret();
  const id = makeName();
  const secretHash = hashSecret(secret);
  const device: HostedDevice = { id, kitchen, name, role, secretHash, madeAtMs: nowMs, seenAtMs: nowMs };
  return { device, credential: `${id}.${secret}` };
}
