/** Draws the app's icons as PNG from its SVG, in the sizes that systems ask for. Run it when the SVG changes. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openBrowser } from "@halfloaf/e2e/openBrowser";

const folder = fileURLToPath(new URL("../apps/web/public/", import.meta.url));
const svg = readFileSync(`${folder}icon.svg`, "utf8");

/** The part of a maskable icon that no system cuts away is a circle of 4/5 of its width (W3C Web Application Manifest). */
const SAFE_SHARE = 0.8;

const icons = [
  { name: "icon-192.png", size: 192, share: 1, background: "transparent" },
  { name: "icon-512.png", size: 512, share: 1, background: "transparent" },
  { name: "icon-maskable-512.png", size: 512, share: SAFE_SHARE, background: "#8a3a12" },
];

const browser = await openBrowser();
try {
  for (const { name, size, share, background } of icons) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const width = Math.round(size * share);
    await page.setContent(
      `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${background}">` +
        `<div style="width:${width}px;height:${width}px">${svg}</div>`,
    );
    await page.screenshot({ path: `${folder}${name}`, omitBackground: true });
    await page.close();
  }
} finally {
  await browser.close();
}
