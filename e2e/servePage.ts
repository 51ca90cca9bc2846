import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";
import { build } from "vite";

/** A page that is served, until it is closed. */
export interface ServedPage {
  readonly url: string;
  /** Paths asked for up to now, in order. */
  readonly asked: readonly string[];
  close(): Promise<void>;
}

/** A page bundled: its files by path. */
export type BundledPage = ReadonlyMap<string, string | Uint8Array>;

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".wasm": "application/wasm",
};
const ISOLATION = {
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Embedder-Policy": "require-corp",
};
const POLICY = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; img-src 'self' data:";

/** Bundles the `index.html` of a folder with its workers and WASM, as an app would be; nothing is written to disk. */
export async function bundlePage(folder: string): Promise<BundledPage> {
  const built = await build({
    root: folder,
    configFile: false,
    logLevel: "error",
    worker: { format: "es" },
    build: { write: false, target: "es2022" },
  });
  const outputs = Array.isArray(built) ? built : [built];
  const files = outputs.flatMap((each) => ("output" in each ? each.output : []));
  return new Map(files.map((file) => [`/${file.fileName}`, file.type === "chunk" ? file.code : file.source]));
}

/**
 * Serves a bundled page on a free port of this machine. With `isolated` it comes with the headers that let it share
 * memory between threads.
 */
export async function servePage(files: BundledPage, isolated: boolean): Promise<ServedPage> {
  const asked: string[] = [];
  const server = createServer(({ url = "/" }, response) => {
    const path = url === "/" ? "/index.html" : url;
    asked.push(path);
    const content = files.get(path);
    const type = TYPES[extname(path)] ?? "application/octet-stream";
    const headers = { "Content-Type": type, "Content-Security-Policy": POLICY, ...(isolated && ISOLATION) };
    response.writeHead(content === undefined ? 404 : 200, headers).end(content);
  });
  await new Promise<void>((resolve) => {
    server.listen(0, "127.0.0.1", resolve);
  });
  const { port } = server.address() as AddressInfo;
  const close = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { url: `http://127.0.0.1:${port}/`, asked, close };
}
