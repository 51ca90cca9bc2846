import { serveStatic } from "@hono/node-server/serve-static";
import { Hono } from "hono";
import { secureHeaders } from "hono/secure-headers";

/** What the server is given. */
export interface AppOptions {
  /** Folder of the built app, as a path from the working folder. */
  readonly files: string;
}

/**
 * The app's pages and files. Nothing is ever asked of another server, no script stands within a page, and WASM alone may be
 * compiled. Files with a name made from their content are kept by the browser for good, all others are asked for anew.
 */
export function createApp({ files }: AppOptions): Hono {
  const app = new Hono();
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
  return app;
}
