import { ROLES } from "@halfloaf/keep/sync";
import { type Command, Option } from "commander";
import type { ExitCode } from "../exitCodes.ts";
import { parseWhole } from "../input/parseOption.ts";
import type { KeepAsk } from "../keep/KeepAsk.ts";
import type { Terminal } from "../output/Terminal.ts";
import { KEEP_HELP } from "../words/keepHelpTexts.ts";
import { SHARE_HELP } from "../words/shareWords.ts";
import { type CalendarsAsk, calendarsCommand } from "./calendarsCommand.ts";
import {
  type DevicesAsk,
  devicesCommand,
  type InviteAsk,
  inviteCommand,
  joinCommand,
  meetCommand,
  type ShareAsk,
  shareCommand,
} from "./shareCommands.ts";

/** Two weeks. */
const MOST_HOURS = 336;

/** Registers the commands on a kitchen that several devices share. */
export function addShare(program: Command, terminal: Terminal, end: (code: ExitCode) => void): void {
  const add = (words: string, help: string) =>
    program
      .command(words)
      .description(help)
      .option("--kitchen <folder>", KEEP_HELP.folder)
      .option("--json", KEEP_HELP.json, false);
  add("share", SHARE_HELP.share)
    .argument("<server>", SHARE_HELP.server)
    .option("--code <code>", SHARE_HELP.code)
    .action(async (server: string, options: Omit<ShareAsk, "server">) =>
      end(await shareCommand({ ...options, server }, terminal)),
    );
  add("invite", SHARE_HELP.invite)
    .addOption(new Option("--role <role>", SHARE_HELP.role).choices(ROLES).default("cook"))
    .option("--hours <hours>", SHARE_HELP.hours, parseWhole(1, MOST_HOURS))
    .action(async (options: InviteAsk) => end(await inviteCommand(options, terminal)));
  add("join", SHARE_HELP.join)
    .argument("<link>", SHARE_HELP.link)
    .action(async (link: string, options: KeepAsk) => end(await joinCommand({ ...options, link }, terminal)));
  add("meet", SHARE_HELP.meet).action(async (options: KeepAsk) => end(await meetCommand(options, terminal)));
  add("devices", SHARE_HELP.devices)
    .option("--remove <device>", SHARE_HELP.remove)
    .action(async (options: DevicesAsk) => end(await devicesCommand(options, terminal)));
  add("calendars", SHARE_HELP.calendars)
    .option("--make", SHARE_HELP.makeCalendar, false)
    .option("--zone <zone>", SHARE_HELP.zone)
    .option("--revoke <calendar>", SHARE_HELP.revokeCalendar)
    .action(async (options: CalendarsAsk) => end(await calendarsCommand(options, terminal)));
}
