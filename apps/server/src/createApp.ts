import { timingSafeEqual } from "node:crypto";
import type { HttpBindings } from "@hono/node-server";
import { serveStatic } from "@hono/node-server/serve-static";
import { Hono } from "hono";
import { secureHeaders } from "hono/secure-headers";
import { ApiDesk, type ApiOptions, tellPath } from "./api/ApiDesk.ts";
import { addressOf } from "./api/addressOf.ts";
import { createApi } from "./api/createApi.ts";
import type { ServerParts } from "./ServerParts.ts";
import { hashSecret } from "./secrets.ts";
import type { SyncHub } from "./sync/SyncHub.ts";

/** What the server is given. */
export interface AppOptions {
  /** Folder of the built app, as a path from the working folder. */
  readonly files: string;
  /** Absent: the app alone, without kitchens to share. */
  readonly host?: HostOptions;
}

/** What a server needs that kitchens are shared on. */
export interface HostOptions extends ApiOptions {
  readonly parts: ServerParts;
  readonly hub: SyncHub;
  /** What `/metrics` is asked with; absent = it is not there. */
  readonly metricsToken?: string | undefined;
}

/**
 * The app's pages and files, and the API. Nothing is ever asked of another server, no script stands within a page, and WASM
 * alone may be compiled. Files with a name made from their content are kept by the browser for good, all others are asked for anew.
 */
export function createApp({ files, host }: AppOptions): Hono<{ Bindings: HttpBindings }> {
  const app = new Hono<{ Bindings: HttpBindings }>();
  app.use(
    secureHeaders({
      contentSecurityPolicy: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
        styleSrc: ["'self'", "'unsafe-inline'"],
        imgSrc: ["'self'", "data:", "blob:"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
      crossOriginOpenerPolicy: "same-origin",
      crossOriginEmbedderPolicy: "require-corp",
      crossOriginResourcePolicy: "same-origin",
      referrerPolicy: "no-referrer",
      permissionsPolicy: { camera: ["self"], microphone: [], geolocation: [] },
    }),
  );
  app.onError((error, context) => {
    host?.parts.journal.error({ path: tellPath(context.req.path), detail: error.stack ?? error.message }, "defect");
    return context.json({ reason: "defect" }, 500);
  });
  if (host !== undefined) addHost(app, host);
  addFiles(app, files);
  return app;
}

function addHost(app: Hono<{ Bindings: HttpBindings }>, host: HostOptions): void {
  const { parts, hub, metricsToken } = host;
  app.use(async (context, next) => {
    await next();
    const { status } = context.res;
    const { path } = context.req;
    parts.measures.requests.inc({ status: String(status) });
    // The API writes down by itself what it refuses.
    if (status < 400 || status >= 500 || path.startsWith("/api/")) return;
    const address = addressOf(context.env.incoming, host.trustedProxies);
    parts.journal.warn({ address, path: tellPath(path), status }, "request-refused");
  });
  // It lives: whoever watches need not end it. It is ready: questions may be sent to it.
  app.get("/health", (context) => context.json({ health: "well" }));
  app.get("/ready", async (context) => {
    const isReady = !hub.isClosing && (await parts.store.ping()) === "done";
    return context.json({ ready: isReady, wire: parts.wire.hears }, isReady ? 200 : 503);
  });
  app.get("/metrics", async (context, next) => {
    if (metricsToken === undefined) return next();
    const given = hashSecret(context.req.header("Authorization")?.replace(/^Bearer /, "") ?? "");
    if (!timingSafeEqual(given, hashSecret(metricsToken))) return context.json({ reason: "unknown" }, 401);
    context.header("Content-Type", parts.measures.registry.contentType);
    return context.body(await parts.measures.registry.metrics());
  });
  app.route("/api/v1", createApi(new ApiDesk(parts, hub, host)));
}

function addFiles(app: Hono<{ Bindings: HttpBindings }>, files: string): void {
  app.use(async (context, next) => {
    await next();
    const isNamedByContent = context.req.path.startsWith("/assets/");
    context.header("Cache-Control", isNamedByContent ? "public, max-age=31536000, immutable" : "no-cache");
  });
  app.use(serveStatic({ root: files, precompressed: true }));
  // Screens have paths of their own; all of them are the one page.
  const page = serveStatic({ root: files, path: "index.html", precompressed: true });
  app.use(async (context, next) => {
    const isFile = /\.[a-z0-9]+$/i.test(context.req.path);
    return isFile || !["GET", "HEAD"].includes(context.req.method) ? next() : page(context, next);
  });
}
