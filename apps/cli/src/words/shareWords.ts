import type { ListedCalendar, ListedDevice, Refusal, Role } from "@halfloaf/keep/sync";
import { tellCount } from "@halfloaf/words/en";
import type { Fault } from "./Fault.ts";
import { quote } from "./valueWords.ts";

/** What the options of sharing are for. */
export const SHARE_HELP = {
  share: "Share the kitchen on a server, which others can be invited to.",
  server: "address of the server, such as https://kitchens.example",
  code: "the code that the server asks for before it takes a new kitchen",
  invite: "Make an invitation: a link that lets one device in, once.",
  role: "what the device may do",
  hours: "how long the invitation holds, in hours",
  join: "Come into a kitchen by the link of an invitation; the folder becomes its copy here.",
  link: "the link of an invitation",
  meet: "Send what was done here to the server, and take in what others did.",
  devices: "List the devices of a shared kitchen, or remove one.",
  calendars: "List the addresses at which calendars read the plan of a shared kitchen, make one, or revoke one.",
  makeCalendar: "make an address; it is shown once",
  zone: "time zone of a new one, such as Europe/Berlin; usually that of this machine",
  revokeCalendar: "name of an address that is to hold no more, as the list has it",
  remove: "name of a device that may not come any more, as the list has it",
} as const;

const REASONS: Readonly<Record<string, readonly [sentence: string, remedy: string]>> = {
  unreachable: ["The server can't be reached.", "Everything stays here; try again when there is a network."],
  slow: ["The server did not answer in time.", "Try again later; what was sent so far is not sent twice."],
  storage: ["The server can't keep anything at the moment.", "Try again later; everything stays here."],
  "not-shared": ["This kitchen is not shared.", 'Share it with "halfloaf share SERVER".'],
  "shared-already": ["This kitchen is shared already.", 'Invite others with "halfloaf invite".'],
  "no-link": ["This is not the link of an invitation.", "Copy all of it, what stands behind # as well."],
  "no-such-invitation": [
    "The invitation was used, revoked or is too old.",
    "Ask for a new one: each lets one device in, once.",
  ],
  "holds-kitchen": ["The folder holds a kitchen already.", "Name a folder that is empty or not there yet."],
  "other-kitchen": ["The server has another kitchen under this name.", "Nothing was mixed; join into an empty folder."],
  unknown: ["The server does not know this device.", "It was removed, or the kitchen was deleted; what is here stays."],
  revoked: ["This device was removed from the kitchen.", "What is here stays; a keeper can invite it again."],
  deleted: ["The kitchen was deleted on the server.", "What is here stays, and can be shared anew."],
  role: ["This device may not do that.", "A keeper of the kitchen can."],
  "last-keeper": ["A kitchen must have one keeper.", "Invite another keeper first."],
  missing: ["There is none of that name.", 'Look at the names in "halfloaf devices" or "halfloaf calendars".'],
  "too-many-calendars": ["The kitchen has as many addresses of calendars as one may.", "Revoke one first."],
  "registration-closed": ["The server takes no new kitchens.", "Ask who runs it, or take another."],
  "code-needed": [
    "The server takes new kitchens with a code only.",
    "Name it with --code; who runs the server has it.",
  ],
};

/** The reasons that are about the server, the folder or the device that was named. */
const NAMED = [
  "unreachable",
  "slow",
  "storage",
  "holds-kitchen",
  "unknown",
  "missing",
  "registration-closed",
  "code-needed",
] as const;

/** Why something about sharing was not done; `value` is the server, the folder or the device that it is about. */
export function tellShareFault(reason: string, value?: string): Fault {
  const [sentence, remedy] = REASONS[reason] ?? [`The server refused: ${quote(reason)}.`, "Try again later."];
  if (value === undefined) return { code: reason, path: [], sentence, remedy };
  const isNamed = NAMED.some((each) => each === reason);
  return {
    code: reason,
    path: [],
    sentence: isNamed ? `${sentence.slice(0, -1)}: ${quote(value)}.` : sentence,
    remedy,
    value,
  };
}

export function tellMet(sent: number, received: number): string {
  return `${tellCount(sent, "row")} sent, ${tellCount(received, "row")} received.`;
}

/** What the server sent back, and what that means. */
export function tellReturned(returned: readonly Refusal[]): string {
  const reasons = [...new Set(returned.map(({ reason }) => reason))].join(", ");
  return `${tellCount(returned.length, "row")} came back and stay here alone: ${reasons}.`;
}

export function tellInvited(role: Role, expires: string): string {
  return `This link lets one device in as ${role}, once, until ${expires}:`;
}

export function tellCalendarMade(): string {
  return "A calendar that is given this address shows what is cooked and bought; whoever has the address can read it:";
}

export function tellCalendar({ calendar, by, zone, seenAtMs }: ListedCalendar & { readonly by: string }): string {
  return `${calendar}  ${zone}  made by ${by}, last asked for ${tellMoment(seenAtMs)}`;
}

export function tellDevice({ device, name, role, seenAtMs }: ListedDevice, isOwn: boolean): string {
  return `${device}  ${role}  ${name}${isOwn ? " (this one)" : ""}, last here ${tellMoment(seenAtMs)}`;
}

function tellMoment(atMs: number): string {
  return `${new Date(atMs).toISOString().slice(0, 16).replace("T", " ")} UTC`;
}
