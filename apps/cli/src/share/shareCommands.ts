import { existsSync } from "node:fs";
import { hostname } from "node:os";
import { resolve } from "node:path";
import type { KeptKitchen } from "@halfloaf/keep";
import { HostDesk, type Membership, parseInvitationLink, type Role, toInvitationLink } from "@halfloaf/keep/sync";
import { refuseInput } from "../commands/refuseInput.ts";
import { EXIT, type ExitCode } from "../exitCodes.ts";
import { loadTables } from "../input/loadTables.ts";
import type { KeepAnswer, KeepAsk } from "../keep/KeepAsk.ts";
import { isKept, namedFolder, openFolder } from "../keep/openFolder.ts";
import type { OpenKeep } from "../keep/openKeep.ts";
import { runKeep } from "../keep/runKeep.ts";
import { harmless, toJsonText } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { tellNoFolder, tellNotKept } from "../words/keepFaultWords.ts";
import { tellDevice, tellInvited, tellMet, tellReturned, tellShareFault } from "../words/shareWords.ts";
import { meetServer } from "./meetServer.ts";
import { readSharing, writeSharing } from "./sharingFile.ts";

export interface ShareAsk extends KeepAsk {
  readonly server: string;
  readonly code?: string;
}

export interface InviteAsk extends KeepAsk {
  readonly role: Role;
  readonly hours?: number;
}

export interface JoinAsk extends KeepAsk {
  readonly link: string;
}

export interface DevicesAsk extends KeepAsk {
  readonly remove?: string;
}

export const desk = new HostDesk(fetch);

/** Shares a kitchen on a server, with this device as its keeper, and sends all of it. */
export function shareCommand(ask: ShareAsk, terminal: Terminal): Promise<ExitCode> {
  return runKeep(ask, terminal, async ({ kept, folder }) => {
    const path = resolve(terminal.cwd, folder);
    if (readSharing(path) !== undefined) return refuse(tellShareFault("shared-already"));
    const server = URL.canParse(ask.server) ? new URL(ask.server).origin : "";
    const made = await desk.makeKitchen(server, nameOf(terminal), ask.code);
    if (!made.ok) return refuse(tellShareFault(made.reason, ask.server));
    writeSharing(path, made.value);
    return tellMeeting(kept, made.value, path);
  });
}

/** Makes an invitation and prints its link. */
export function inviteCommand({ role, hours, ...ask }: InviteAsk, terminal: Terminal): Promise<ExitCode> {
  return runShared(ask, terminal, async (_open, membership) => {
    const invited = await desk.invite(membership, role, hours);
    if (!invited.ok) return refuse(tellShareFault(invited.reason, membership.server));
    const link = toInvitationLink(invited.value);
    const expires = new Date(invited.value.expiresAtMs).toISOString();
    const data = { format: "halfloaf-invitation", version: 1, role, link, expires };
    return { ok: true, value: { data, lines: [tellInvited(role, expires), link] } };
  });
}

/** Brings the kitchen and its server up to date with each other. */
export function meetCommand(ask: KeepAsk, terminal: Terminal): Promise<ExitCode> {
  return runShared(ask, terminal, ({ kept }, membership, path) => tellMeeting(kept, membership, path));
}

/** Lists the devices of a kitchen, after one was removed where that is asked. */
export function devicesCommand({ remove, ...ask }: DevicesAsk, terminal: Terminal): Promise<ExitCode> {
  return runShared(ask, terminal, async (_open, membership) => {
    const removed = remove === undefined ? undefined : await desk.removeDevice(membership, remove);
    if (removed?.ok === false)
      return refuse(tellShareFault(removed.reason, removed.reason === "missing" ? remove : membership.server));
    const listed = await desk.listDevices(membership);
    if (!listed.ok) return refuse(tellShareFault(listed.reason, membership.server));
    const lines = listed.value.map((each) => harmless(tellDevice(each, each.device === membership.device)));
    return { ok: true, value: { data: { format: "halfloaf-devices", version: 1, devices: listed.value }, lines } };
  });
}

/** Comes into a kitchen by an invitation; an empty folder, or one that is not there, becomes its copy. */
export async function joinCommand(ask: JoinAsk, terminal: Terminal): Promise<ExitCode> {
  const found = await join(ask, terminal);
  if (!found.ok) return refuseInput(namedFolder(ask.kitchen, terminal) ?? "halfloaf", found.faults, ask.json, terminal);
  if (ask.json) terminal.print(toJsonText(found.value.data));
  else for (const line of found.value.lines) terminal.print(line);
  return EXIT.done;
}

async function join({ link, kitchen }: JoinAsk, terminal: Terminal): Promise<Found<KeepAnswer>> {
  const folder = namedFolder(kitchen, terminal);
  if (folder === undefined) return refuse(tellNoFolder());
  const invitation = parseInvitationLink(link);
  if (invitation === undefined) return refuse(tellShareFault("no-link"));
  const path = resolve(terminal.cwd, folder);
  if (isKept(folder, terminal.cwd) || existsSync(resolve(path, "sharing.json")))
    return refuse(tellShareFault("holds-kitchen", folder));
  // The folder first: an invitation is used up once, and nothing may go wrong after it.
  const opened = await openFolder(folder, loadTables().foods, terminal);
  if (!opened.ok) return opened;
  const joined = await desk.join(invitation, nameOf(terminal));
  if (joined.ok) writeSharing(path, joined.value);
  const found = joined.ok
    ? await tellMeeting(opened.value, joined.value, path)
    : refuse(tellShareFault(joined.reason, invitation.server));
  const closed = await opened.value.close();
  return closed.ok || !found.ok ? found : refuse(tellNotKept(closed.reason, closed.detail));
}

/** Does something with a kitchen that is shared; refused where it is not. */
export function runShared(
  ask: KeepAsk,
  terminal: Terminal,
  act: (open: OpenKeep, membership: Membership, path: string) => Promise<Found<KeepAnswer>>,
): Promise<ExitCode> {
  return runKeep(ask, terminal, (open) => {
    const path = resolve(terminal.cwd, open.folder);
    const membership = readSharing(path);
    return membership === undefined ? refuse(tellShareFault("not-shared")) : act(open, membership, path);
  });
}

async function tellMeeting(kept: KeptKitchen, membership: Membership, path: string): Promise<Found<KeepAnswer>> {
  const met = await meetServer(kept, membership, path);
  if (!met.ok) return refuse(tellShareFault(met.reason, membership.server));
  const { sent, received, view } = met;
  const { returned, role } = view;
  const data = { format: "halfloaf-met", version: 1, server: membership.server, role, sent, received, returned };
  const lines = [tellMet(sent, received), ...(returned.length === 0 ? [] : [tellReturned(returned)])];
  return { ok: true, value: { data, lines } };
}

function nameOf({ env }: Terminal): string {
  return (env.HALFLOAF_DEVICE ?? hostname()).slice(0, 60) || "device";
}
