import { homedir } from "node:os";
import { join } from "node:path";
import { type Issue, type Parsed, parseWith } from "halfloaf/quantity";
import * as v from "valibot";
import type { Registration } from "./api/ApiDesk.ts";

/** How a server is set up; all of it comes from the environment, secrets above all. */
export interface Settings {
  readonly hostname: string;
  /** Absent = the usual one, or a free one where that is taken. */
  readonly port?: number;
  /** Folder of the SQLite store, used where there is no database of PostgreSQL. */
  readonly folder: string;
  readonly databaseUrl?: string;
  readonly redisUrl?: string;
  readonly registration: Registration;
  readonly metricsToken?: string;
  readonly trustedProxies: number;
  readonly origins: readonly string[];
  readonly logLevel: string;
  /** Kitchens that no device has come to for so many days are taken away; absent = none ever is. */
  readonly forgetDays?: number;
  /** Sockets that one address may have open. */
  readonly socketsOfAddress?: number;
}

const text = v.pipe(v.string(), v.nonEmpty());
const whole = (least: number, most: number) =>
  v.pipe(v.string(), v.regex(/^\d{1,9}$/), v.transform(Number), v.minValue(least), v.maxValue(most));

/** Shorter ones could be guessed. */
const secret = v.pipe(v.string(), v.minLength(16, "at least 16 characters"));

const Environment = v.object({
  HOST: v.optional(text, "127.0.0.1"),
  PORT: v.optional(whole(0, 65_535)),
  XDG_DATA_HOME: v.optional(text),
  HALFLOAF_FOLDER: v.optional(text),
  DATABASE_URL: v.optional(v.pipe(v.string(), v.regex(/^postgres(ql)?:\/\//, "postgresql://…"))),
  REDIS_URL: v.optional(v.pipe(v.string(), v.regex(/^rediss?:\/\//, "redis://… or rediss://…"))),
  HALFLOAF_REGISTRATION: v.optional(v.picklist(["open", "code", "closed"]), "open"),
  HALFLOAF_REGISTRATION_CODE: v.optional(secret),
  HALFLOAF_METRICS_TOKEN: v.optional(secret),
  HALFLOAF_TRUSTED_PROXIES: v.optional(whole(0, 5), "0"),
  HALFLOAF_ORIGINS: v.optional(text),
  HALFLOAF_LOG: v.optional(v.picklist(["error", "warn", "info"]), "info"),
  HALFLOAF_FORGET_DAYS: v.optional(whole(30, 36_500)),
  HALFLOAF_SOCKETS_OF_ADDRESS: v.optional(whole(1, 1_000_000)),
});

/** Reads the environment; all that is wrong with it at once, never with the value of a secret. */
export function parseSettings(environment: unknown): Parsed<Settings> {
  const read = parseWith(Environment, environment);
  if (!read.ok) return { ok: false, issues: read.issues.map(hideSecret) };
  const given = read.value;
  const registration = toRegistration(given.HALFLOAF_REGISTRATION, given.HALFLOAF_REGISTRATION_CODE);
  if (registration === undefined)
    return { ok: false, issues: [missing("HALFLOAF_REGISTRATION_CODE", "a code, since registration asks for one")] };
  if (given.REDIS_URL !== undefined && given.DATABASE_URL === undefined)
    return { ok: false, issues: [missing("DATABASE_URL", "a database, since several servers can't share SQLite")] };
  const value: Settings = {
    hostname: given.HOST,
    folder: given.HALFLOAF_FOLDER ?? join(given.XDG_DATA_HOME ?? join(homedir(), ".local", "share"), "halfloaf-server"),
    registration,
    trustedProxies: given.HALFLOAF_TRUSTED_PROXIES,
    origins: given.HALFLOAF_ORIGINS?.split(",").map((each) => each.trim()) ?? [],
    logLevel: given.HALFLOAF_LOG,
    ...(given.PORT === undefined ? {} : { port: given.PORT }),
    ...(given.DATABASE_URL === undefined ? {} : { databaseUrl: given.DATABASE_URL }),
    ...(given.REDIS_URL === undefined ? {} : { redisUrl: given.REDIS_URL }),
    ...(given.HALFLOAF_METRICS_TOKEN === undefined ? {} : { metricsToken: given.HALFLOAF_METRICS_TOKEN }),
    ...(given.HALFLOAF_FORGET_DAYS === undefined ? {} : { forgetDays: given.HALFLOAF_FORGET_DAYS }),
    ...(given.HALFLOAF_SOCKETS_OF_ADDRESS === undefined ? {} : { socketsOfAddress: given.HALFLOAF_SOCKETS_OF_ADDRESS }),
  };
  return { ok: true, value };
}

function toRegistration(kind: "open" | "code" | "closed", code: string | undefined): Registration | undefined {
  if (kind !== "code") return { kind };
  return code === undefined ? undefined : { kind, code };
}

const SECRETS = ["HALFLOAF_REGISTRATION_CODE", "HALFLOAF_METRICS_TOKEN", "DATABASE_URL", "REDIS_URL"];

function hideSecret({ code, path, expected, received }: Issue): Issue {
  return { code, path, expected, received: SECRETS.includes(String(path[0])) ? "(not shown)" : received };
}

function missing(name: string, expected: string): Issue {
  return { code: "missing", path: [name], expected, received: "nothing" };
}
