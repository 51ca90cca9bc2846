import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { startHost, type TestHost } from "@halfloaf/server/testing/host";
import { buildApp } from "@halfloaf/web/build";
import { furtherEn } from "@halfloaf/web/words/further";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader";
import { hasBrowser, openBrowser } from "../openBrowser.ts";
import { invite, openKeeper } from "./shareApp.ts";

describe.skipIf(!hasBrowser)("the picture of an invitation", () => {
  let browser: Browser;
  let host: TestHost;
  beforeAll(async () => {
    const wasm = createRequire(import.meta.url).resolve("zxing-wasm/reader/zxing_reader.wasm");
    const { buffer, byteOffset, byteLength } = readFileSync(wasm);
    const wasmBinary = buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer;
    prepareZXingModule({ overrides: { wasmBinary } });
    browser = await openBrowser();
    host = await startHost({ files: buildApp() });
  });
  afterAll(async () => {
    await browser?.close();
    await host?.stop();
  });

  test("is read as the very link that stands beside it, on a light page and on a dark one", async () => {
    const { page, context } = await openKeeper(browser, host);
    const link = await invite(page, "cook");
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      const picture = await page.getByRole("img", { name: furtherEn.sharing.qr }).screenshot();
      const found = await readBarcodes(new Uint8Array(picture), { formats: ["QRCode"] });
      expect(found.map(({ text }) => text)).toEqual([link]);
    }
    await context.close();
  });
});
