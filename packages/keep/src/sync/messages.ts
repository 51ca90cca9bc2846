import { Id } from "halfloaf/food";
import { type Parsed, parseWith } from "halfloaf/quantity";
import * as v from "valibot";

/** The version of the talk between a device and its server; a server refuses another one. */
export const SYNC_PROTOCOL = 1;

/** Where a server takes sockets. */
export const SYNC_PATH = "/sync";

/** What a device may do: all; write what happened; read. */
export const ROLES = ["keeper", "cook", "reader"] as const;
export type Role = (typeof ROLES)[number];

/** A name that the server gave: of a kitchen, a device, an invitation or a log. */
export const GivenName = v.pipe(v.string(), v.regex(/^[a-z0-9]{8,40}$/, "a name that the server gave"));

/** What shows that a device is who it says: its name and its secret of 256 bits, joined by a full stop. */
export const Credential = v.pipe(v.string(), v.regex(/^[a-z0-9]{8,40}\.[A-Za-z0-9_-]{43}$/, "a name and a secret"));

const whole = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

/** Most rows of one message. */
const MOST_ROWS_SAID = 500;

/** What a device says to its server. */
export const DeviceMessage = v.variant("say", [
  /** First of all: who it is, and how far it has read which log. `writer` is the opening that writes from now on. */
  v.strictObject({
    say: v.literal("hello"),
    protocol: v.number(),
    kitchen: GivenName,
    credential: Credential,
    log: v.optional(GivenName),
    after: whole,
    writer: v.optional(Id),
  }),
  /** Rows to be kept; `ref` is named in the answer. Rows of one act stand in one message. */
  v.strictObject({
    say: v.literal("push"),
    ref: whole,
    rows: v.pipe(v.array(v.unknown()), v.minLength(1), v.maxLength(MOST_ROWS_SAID)),
  }),
  /** Which rows the server has, asked where the device may have others. */
  v.strictObject({ say: v.literal("which") }),
  /** Who is at the device and on which screen. */
  v.strictObject({ say: v.literal("here"), by: v.optional(Id), at: v.optional(v.pipe(Id, v.maxLength(40))) }),
]);
export type DeviceMessage = v.InferOutput<typeof DeviceMessage>;

/** Why a row was not kept. */
const REFUSALS = [
  /** It is no row that this server's program understands. */
  "schema",
  /** The role of the device does not allow it. */
  "role",
  /** It takes back what another device wrote. */
  "not-yours",
  /** Its id belongs to a writer of another device. */
  "writer-taken",
  /** Another row has its id. */
  "id-taken",
  /** It says it was written at a time that no clock shows. */
  "clock",
  "too-large",
  /** The kitchen has as many rows or bytes as one may. */
  "kitchen-full",
  /** Another row of its act was refused. */
  "act",
] as const;

const Refusal = v.object({
  /** Id of the row; absent where it has none. */
  id: v.optional(v.string()),
  reason: v.picklist(REFUSALS),
  /** What is wrong with it, for `schema`: path and what was expected there. */
  issues: v.optional(v.array(v.object({ path: v.string(), expected: v.string() }))),
});
export type Refusal = v.InferOutput<typeof Refusal>;

/** Why a server ends a talk. */
const FAREWELLS = [
  /** No such kitchen, no such device, or a wrong secret: which of them is not told. */
  "unknown",
  "revoked",
  "deleted",
  "protocol",
  "malformed",
  "flooding",
  "slow",
  "full",
  /** The server stops or can't reach its storage; another try is welcome. */
  "restart",
] as const;
export type Farewell = (typeof FAREWELLS)[number];

const Present = v.object({
  device: v.string(),
  name: v.string(),
  role: v.picklist(ROLES),
  by: v.optional(v.string()),
  at: v.optional(v.string()),
});
/** A device that is in the kitchen now; `by` is the eater at it, `at` the screen. */
export type Present = v.InferOutput<typeof Present>;

/** What a server says to a device. */
export const ServerMessage = v.variant("say", [
  /** `upTo` is the last row of the log, and thereby how many rows it has. */
  v.object({
    say: v.literal("welcome"),
    device: v.string(),
    role: v.picklist(ROLES),
    log: v.string(),
    upTo: whole,
    messageBytes: whole,
  }),
  /** The rows after those said before, up to that one of the log. */
  v.object({ say: v.literal("rows"), upTo: whole, rows: v.array(v.unknown()) }),
  /** All rows of the push that are not refused are on disk. */
  v.object({ say: v.literal("answer"), ref: whole, refused: v.array(Refusal) }),
  /** The push could not be kept now; the device keeps its rows and comes again. */
  v.object({ say: v.literal("trouble"), ref: whole }),
  /** The numbers of each writer's rows, as runs: `1-57,59`. */
  v.object({ say: v.literal("which"), numbers: v.record(v.string(), v.string()) }),
  v.object({ say: v.literal("here"), devices: v.array(Present) }),
  v.object({ say: v.literal("bye"), reason: v.picklist(FAREWELLS) }),
]);
export type ServerMessage = v.InferOutput<typeof ServerMessage>;

/** Reads what came over a socket; all that is wrong with it at once. */
export function parseMessage<Schema extends typeof DeviceMessage | typeof ServerMessage>(
  schema: Schema,
  text: string,
): Parsed<v.InferOutput<Schema>> {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch {
    return { ok: false, issues: [{ code: "json", path: [], expected: "JSON", received: "text" }] };
  }
  return parseWith(schema, content) as Parsed<v.InferOutput<Schema>>;
}
