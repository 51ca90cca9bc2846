import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Plugin } from "vite";

const WORTH_IT = /\.(js|css|html|json|wasm|svg|webmanifest)$/;
const LEAST_BYTES = 1024;

/** Puts a file compressed by gzip beside each file that gains by it, so that the server need not compress. */
export function compressedFiles(): Plugin {
  let folder = "";
  return {
    name: "halfloaf-compressed-files",
    apply: "build",
    enforce: "post",
    configResolved({ build }) {
      folder = build.outDir;
    },
    closeBundle: {
      order: "post",
      sequential: true,
      handler() {
        for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
          if (!WORTH_IT.test(name)) continue;
          const content = readFileSync(join(folder, name));
          if (content.length >= LEAST_BYTES) writeFileSync(join(folder, `${name}.gz`), gzipSync(content, { level: 9 }));
        }
      },
    },
  };
}
