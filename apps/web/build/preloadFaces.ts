import type { Plugin } from "vite";

/** The faces that the first words on the page are set in: text and titles, in Latin letters. */
const FIRST_FACES = /-latin-wght-normal-.*\.woff2$/;

/** Has the page fetch its faces beside its script, so that they are there when the first words are. */
export function preloadFaces(): Plugin {
  return {
    name: "halfloaf-preload-faces",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler: (_, { bundle }) =>
        Object.keys(bundle ?? {})
          .filter((name) => FIRST_FACES.test(name))
          .map((name) => ({
            tag: "link",
            attrs: { rel: "preload", as: "font", type: "font/woff2", href: `/${name}`, crossorigin: true },
            injectTo: "head" as const,
          })),
    },
  };
}
