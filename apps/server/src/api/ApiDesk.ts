import type { StoreFault } from "@halfloaf/keep";
import type { HttpBindings } from "@hono/node-server";
import type { Context } from "hono";
import * as v from "valibot";
import type { HostedDevice } from "../host/HostStore.ts";
import type { ServerParts } from "../ServerParts.ts";
import type { SyncHub } from "../sync/SyncHub.ts";
import { addressOf } from "./addressOf.ts";

/** Who may make new kitchens: everybody, who knows the code, or nobody. */
export type Registration = { readonly kind: "open" | "closed" } | { readonly kind: "code"; readonly code: string };

export interface ApiOptions {
  readonly registration: Registration;
  readonly trustedProxies: number;
}

/** What a route is given: `device` where it asks for a credential. */
export interface ApiContext {
  Bindings: HttpBindings;
  Variables: { device: HostedDevice };
}

/** What the routes of the API have in common. */
export class ApiDesk {
  readonly parts: ServerParts;
  readonly hub: SyncHub;
  readonly options: ApiOptions;

  constructor(parts: ServerParts, hub: SyncHub, options: ApiOptions) {
    this.parts = parts;
    this.hub = hub;
    this.options = options;
  }

  addressOf(context: Context<ApiContext>): string {
    return addressOf(context.env.incoming, this.options.trustedProxies);
  }

  isKeeper(context: Context<ApiContext>): boolean {
    return context.get("device").role === "keeper";
  }

  /** Answers that something is not done, and writes it down. */
  refuse(context: Context<ApiContext>, status: 400 | 401 | 403 | 404 | 409 | 413 | 415 | 429, reason: string) {
    const facts = { address: this.addressOf(context), path: tellPath(context.req.path), reason };
    this.parts.journal.warn(facts, "request-refused");
    if (status === 429) context.header("Retry-After", "60");
    return context.json({ reason }, status);
  }

  /** Counts a wrong secret for that name against the address, and refuses. */
  refuseMistake(context: Context<ApiContext>, status: 401 | 403 | 404, reason: string, name: string) {
    this.hub.mistakes.note(this.addressOf(context), name, this.parts.now());
    return this.refuse(context, status, reason);
  }

  /** True where the address has shown too many wrong secrets for that name. */
  isShut(context: Context<ApiContext>, name: string): boolean {
    return this.hub.mistakes.isShut(this.addressOf(context), name, this.parts.now());
  }

  /** Answers that the store could not be asked. */
  fail(context: Context<ApiContext>, { reason, detail }: StoreFault) {
    this.parts.measures.troubles.inc({ reason });
    this.parts.journal.error({ reason, detail }, "store-trouble");
    context.header("Retry-After", "5");
    return context.json({ reason: "storage" }, 503);
  }

  /** Answers what came of a change to a device or an invitation. */
  tellChange(context: Context<ApiContext>, changed: "done" | "missing" | "last-keeper") {
    if (changed === "missing") return this.refuse(context, 404, "missing");
    return changed === "last-keeper" ? this.refuse(context, 409, "last-keeper") : context.body(null, 204);
  }
}

/** A path as it may be written down: the address of a calendar has a secret in it. */
export function tellPath(path: string): string {
  return path.replace(/(\/calendars\/).*\..*/, "$1…");
}

/** Reads what was sent; undefined where it is not what the schema says. */
export async function readBody<Schema extends v.GenericSchema>(
  context: Context<ApiContext>,
  schema: Schema,
): Promise<v.InferOutput<Schema> | undefined> {
  try {
    const read = v.safeParse(schema, await context.req.json());
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}
