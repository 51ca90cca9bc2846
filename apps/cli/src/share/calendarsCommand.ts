import type { HostAnswer, ListedCalendar, Membership } from "@halfloaf/keep/sync";
import { sheetCatalogueEn } from "@halfloaf/words/en/sheets";
import { toCalendarTemplates, zoneClock } from "halfloaf/sheet";
import type { ExitCode } from "../exitCodes.ts";
import type { KeepAsk } from "../keep/KeepAsk.ts";
import { harmless } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { refuse } from "../words/Fault.ts";
import { tellCalendar, tellCalendarMade, tellShareFault } from "../words/shareWords.ts";
import { tellNoZone } from "../words/zoneWords.ts";
import { desk, runShared } from "./shareCommands.ts";

export interface CalendarsAsk extends KeepAsk {
  readonly make: boolean;
  /** Time zone by its name in the IANA database; absent: that of this machine. */
  readonly zone?: string;
  /** The one that is to be revoked. */
  readonly revoke?: string;
}

/** Lists the addresses at which calendars read the kitchen's plan, after one was made or revoked where that is asked. */
export function calendarsCommand({ make, zone, revoke, ...ask }: CalendarsAsk, terminal: Terminal): Promise<ExitCode> {
  return runShared(ask, terminal, async (open, membership) => {
    const clock = zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
    if (zoneClock(clock) === undefined) return refuse(tellNoZone(clock));
    const { language, calendar } = sheetCatalogueEn(open.edited.english).sheet;
    const words = toCalendarTemplates(calendar);
    const made = make ? await desk.makeCalendar(membership, { language, zone: clock, words }) : undefined;
    if (made?.ok === false) return refuse(tellShareFault(made.reason));
    const revoked = revoke === undefined ? undefined : await desk.removeCalendar(membership, revoke);
    if (revoked?.ok === false) return refuse(tellShareFault(revoked.reason, revoke));
    const listed = await listWithNames(membership);
    if (!listed.ok) return refuse(tellShareFault(listed.reason));
    const address = made?.value.address;
    const data = { format: "halfloaf-calendars", version: 1, calendars: listed.value, ...(made && { address }) };
    const shown = address === undefined ? [] : [tellCalendarMade(), address];
    const lines = [...shown, ...listed.value.map((each) => harmless(tellCalendar(each)))];
    return { ok: true, value: { data, lines } };
  });
}

/** The calendars with the names of the devices that made them. */
async function listWithNames(
  membership: Membership,
): Promise<HostAnswer<(ListedCalendar & { readonly by: string })[]>> {
  const [calendars, devices] = await Promise.all([desk.listCalendars(membership), desk.listDevices(membership)]);
  if (!calendars.ok) return calendars;
  if (!devices.ok) return devices;
  const names = new Map(devices.value.map(({ device, name }) => [device, name]));
  return { ok: true, value: calendars.value.map((each) => ({ ...each, by: names.get(each.madeBy) ?? each.madeBy })) };
}
