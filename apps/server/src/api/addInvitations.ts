import { GivenName } from "@halfloaf/keep/sync";
import type { Hono } from "hono";
import * as v from "valibot";
import { type HostedInvitation, isFault } from "../host/HostStore.ts";
import { hashSecret, makeName, makeSecret } from "../secrets.ts";
import { type ApiContext, type ApiDesk, readBody } from "./ApiDesk.ts";
import { NewInvitation } from "./requests.ts";

/** Invitations to a kitchen: made, listed while nobody has used them, revoked. */
export function addInvitations(api: Hono<ApiContext>, desk: ApiDesk): void {
  const { store, limits, journal, now } = desk.parts;

  api.post("/kitchens/:kitchen/invitations", async (context) => {
    const { kitchen, id } = context.get("device");
    if (!desk.isKeeper(context)) return desk.refuse(context, 403, "role");
    const read = await readBody(context, NewInvitation);
    if (read === undefined) return desk.refuse(context, 400, "malformed");
    const open = await store.listInvitations(kitchen, now());
    if (isFault(open)) return desk.fail(context, open);
    if (open.length >= limits.invitationsOfKitchen) return desk.refuse(context, 409, "too-many-invitations");
    const secret = makeSecret();
    const name = makeName();
    const expiresAtMs = Math.floor(now() + read.hours * 3_600_000);
    const secretHash = hashSecret(secret);
    const invitation: HostedInvitation = { id: name, kitchen, role: read.role, secretHash, madeBy: id, expiresAtMs };
    const added = await store.addInvitation(invitation, now());
    if (isFault(added)) return desk.fail(context, added);
    journal.info({ kitchen, invitation: name, role: read.role, by: id }, "invitation-made");
    return context.json({ ...tellInvitation(invitation), code: `${name}.${secret}` }, 201);
  });

  api.get("/kitchens/:kitchen/invitations", async (context) => {
    if (!desk.isKeeper(context)) return desk.refuse(context, 403, "role");
    const open = await store.listInvitations(context.get("device").kitchen, now());
    if (isFault(open)) return desk.fail(context, open);
    return context.json({ invitations: open.map(tellInvitation) });
  });

  api.delete("/kitchens/:kitchen/invitations/:invitation", async (context) => {
    const { kitchen, id } = context.get("device");
    if (!desk.isKeeper(context)) return desk.refuse(context, 403, "role");
    const name = context.req.param("invitation");
    const removed = v.is(GivenName, name) ? await store.removeInvitation(kitchen, name) : "missing";
    if (isFault(removed)) return desk.fail(context, removed);
    if (removed === "done") journal.info({ kitchen, invitation: name, by: id }, "invitation-revoked");
    return desk.tellChange(context, removed);
  });
}

function tellInvitation({ id, role, madeBy, expiresAtMs }: HostedInvitation) {
  return { invitation: id, role, madeBy, expiresAtMs };
}
