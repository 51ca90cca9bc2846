import * as v from "valibot";
import type { Invitation } from "./invitationLink.ts";
import { ROLES, type Role } from "./messages.ts";
import type { Membership } from "./syncView.ts";

const whole = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const Joined = v.object({ kitchen: v.string(), device: v.string(), credential: v.string(), role: v.picklist(ROLES) });
const Device = v.object({
  device: v.string(),
  name: v.string(),
  role: v.picklist(ROLES),
  madeAtMs: whole,
  seenAtMs: whole,
});
const OpenInvitation = v.object({
  invitation: v.string(),
  role: v.picklist(ROLES),
  madeBy: v.string(),
  expiresAtMs: whole,
});
const NewInvitation = v.object({ ...OpenInvitation.entries, code: v.string() });
const Calendar = v.object({
  calendar: v.string(),
  madeBy: v.string(),
  language: v.string(),
  zone: v.string(),
  madeAtMs: whole,
  seenAtMs: whole,
});
const NewCalendar = v.object({ ...Calendar.entries, code: v.string() });
const Refused = v.object({ reason: v.string() });

/** A device that may come to a kitchen; times in milliseconds since 1970, the last visit to the hour. */
export type ListedDevice = v.InferOutput<typeof Device>;
/** An invitation that nobody has used yet. */
export type ListedInvitation = v.InferOutput<typeof OpenInvitation>;

/** An address of a calendar: which device made it, and when it was asked for last, to the hour. */
export type ListedCalendar = v.InferOutput<typeof Calendar>;
/** How a calendar is to be written; `words` are templates with names in braces. */
export interface CalendarManner {
  readonly language: string;
  readonly zone: string;
  readonly words: Readonly<Record<string, string>>;
}

/** What a server answered, or why it did not: `unreachable`, `strange`, or the server's own word for it. */
export type HostAnswer<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly reason: string };

type Fetch = (url: string, request: RequestInit) => Promise<Response>;

/** What a device asks its server besides rows. `fetch` is the platform's. */
export class HostDesk {
  readonly #fetch: Fetch;

  constructor(fetch: Fetch) {
    // Browsers refuse a fetch that is called as a method of anything but their own window.
    this.#fetch = (url, request) => fetch(url, request);
  }

  /** Makes a kitchen there, with this device as its keeper; `code` where the server asks for one. */
  async makeKitchen(server: string, deviceName: string, code?: string): Promise<HostAnswer<Membership>> {
    const body = { device: deviceName, ...(code === undefined ? {} : { code }) };
    return withServer(server, await this.#ask(`${server}/api/v1/kitchens`, "POST", Joined, { body }));
  }

  /** Uses an invitation up. */
  async join({ server, kitchen, code }: Invitation, deviceName: string): Promise<HostAnswer<Membership>> {
    const body = { kitchen, code, device: deviceName };
    return withServer(server, await this.#ask(`${server}/api/v1/join`, "POST", Joined, { body }));
  }

  /** Makes an invitation for one device, which holds for so many hours, and gives what its link says. */
  async invite(membership: Membership, role: Role, hours?: number): Promise<HostAnswer<Invitation & ListedInvitation>> {
    const body = { role, ...(hours === undefined ? {} : { hours }) };
    const asked = await this.#askFor(membership, "/invitations", "POST", NewInvitation, body);
    if (!asked.ok) return asked;
    return { ok: true, value: { ...asked.value, server: membership.server, kitchen: membership.kitchen } };
  }

  async listInvitations(membership: Membership): Promise<HostAnswer<readonly ListedInvitation[]>> {
    const List = v.object({ invitations: v.array(OpenInvitation) });
    const asked = await this.#askFor(membership, "/invitations", "GET", List);
    return asked.ok ? { ok: true, value: asked.value.invitations } : asked;
  }

  revoke(membership: Membership, invitation: string): Promise<HostAnswer<null>> {
    return this.#askFor(membership, `/invitations/${invitation}`, "DELETE", v.null());
  }

  async listDevices(membership: Membership): Promise<HostAnswer<readonly ListedDevice[]>> {
    const asked = await this.#askFor(membership, "/devices", "GET", v.object({ devices: v.array(Device) }));
    return asked.ok ? { ok: true, value: asked.value.devices } : asked;
  }

  /** Removes a device: itself, or as a keeper any but the last keeper. */
  removeDevice(membership: Membership, device: string): Promise<HostAnswer<null>> {
    return this.#askFor(membership, `/devices/${device}`, "DELETE", v.null());
  }

  changeRole(membership: Membership, device: string, role: Role): Promise<HostAnswer<null>> {
    return this.#askFor(membership, `/devices/${device}/role`, "PUT", v.null(), { role });
  }

  /** Makes an address at which a calendar reads the kitchen's plan; it holds for as long as this device stays. */
  async makeCalendar(
    membership: Membership,
    manner: CalendarManner,
  ): Promise<HostAnswer<ListedCalendar & { readonly address: string }>> {
    const asked = await this.#askFor(membership, "/calendars", "POST", NewCalendar, manner);
    if (!asked.ok) return asked;
    const { code, ...listed } = asked.value;
    const address = `${membership.server}/api/v1/calendars/${membership.kitchen}/${code}.ics`;
    return { ok: true, value: { ...listed, address } };
  }

  async listCalendars(membership: Membership): Promise<HostAnswer<readonly ListedCalendar[]>> {
    const asked = await this.#askFor(membership, "/calendars", "GET", v.object({ calendars: v.array(Calendar) }));
    return asked.ok ? { ok: true, value: asked.value.calendars } : asked;
  }

  /** Revokes an address: one that this device made, or as a keeper any. */
  removeCalendar(membership: Membership, calendar: string): Promise<HostAnswer<null>> {
    return this.#askFor(membership, `/calendars/${calendar}`, "DELETE", v.null());
  }

  /** Deletes the kitchen on the server; what devices have of it stays with them. */
  deleteKitchen(membership: Membership): Promise<HostAnswer<null>> {
    return this.#askFor(membership, "", "DELETE", v.null());
  }

  /** All rows that the server has, as a backup. */
  exportKitchen(membership: Membership): Promise<HostAnswer<unknown>> {
    return this.#askFor(membership, "/export", "GET", v.unknown());
  }

  #askFor<Schema extends v.GenericSchema>(
    { server, kitchen, credential }: Membership,
    path: string,
    method: string,
    schema: Schema,
    body?: object,
  ): Promise<HostAnswer<v.InferOutput<Schema>>> {
    const url = `${server}/api/v1/kitchens/${kitchen}${path}`;
    return this.#ask(url, method, schema, body === undefined ? { credential } : { credential, body });
  }

  async #ask<Schema extends v.GenericSchema>(
    url: string,
    method: string,
    schema: Schema,
    { body, credential }: { body?: object; credential?: string },
  ): Promise<HostAnswer<v.InferOutput<Schema>>> {
    const headers: Record<string, string> = {};
    if (credential !== undefined) headers.Authorization = `Bearer ${credential}`;
    if (body !== undefined) headers["Content-Type"] = "application/json";
    let content: unknown;
    let isSound: boolean;
    try {
      const answer = await this.#fetch(url, {
        method,
        headers,
        credentials: "omit",
        redirect: "error",
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      isSound = answer.ok;
      content = answer.status === 204 ? null : await answer.json();
    } catch {
      return { ok: false, reason: "unreachable" };
    }
    const read = v.safeParse(schema, content);
    if (isSound && read.success) return { ok: true, value: read.output };
    return { ok: false, reason: !isSound && v.is(Refused, content) ? content.reason : "strange" };
  }
}

function withServer(server: string, asked: HostAnswer<v.InferOutput<typeof Joined>>): HostAnswer<Membership> {
  if (!asked.ok) return asked;
  const { kitchen, device, credential } = asked.value;
  return { ok: true, value: { server, kitchen, device, credential } };
}
