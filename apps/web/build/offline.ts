import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";

/** The solver is the largest file by far. */
const MOST_BYTES = 8 * 1024 * 1024;

/**
 * The service worker, which keeps every file of the app on the device at the first visit, and the manifest, which lets the
 * app be installed and text be shared with it. A newer app waits until it is asked for, so that no page changes under the
 * hand.
 */
export function offline(): Plugin[] {
  return VitePWA({
    registerType: "prompt",
    injectRegister: null,
    includeAssets: [],
    workbox: {
      globPatterns: ["**/*.{js,css,html,svg,png,json,wasm,woff2}"],
      maximumFileSizeToCacheInBytes: MOST_BYTES,
      navigateFallback: "/index.html",
      navigateFallbackDenylist: [/\.[a-z0-9]+$/i],
      // What is named by its content needs no second mark of its version.
      dontCacheBustURLsMatching: /^assets\//,
      cleanupOutdatedCaches: true,
      // The page of the first visit is served from the device, too, as soon as everything is there.
      clientsClaim: true,
      sourcemap: false,
    },
    manifest: {
      id: "/",
      name: "Halfloaf",
      short_name: "Halfloaf",
      description: "Plans, prices, times and accounts for cooking on very little money, on this device alone.",
      start_url: "/",
      scope: "/",
      display: "standalone",
      background_color: "#f8f1e4",
      theme_color: "#8a3a12",
      icons: [
        { src: "/icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
        { src: "/icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
        { src: "/icon-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
        { src: "/icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
      ],
      share_target: { action: "/dishes", method: "GET", params: { title: "title", text: "shared", url: "from" } },
    },
  });
}
