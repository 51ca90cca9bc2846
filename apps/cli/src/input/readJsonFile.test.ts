import { mkdirSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { readJsonFile } from "./readJsonFile.ts";

const folder = mkdtempSync(join(tmpdir(), "halfloaf-read-"));
afterAll(() => rmSync(folder, { recursive: true }));

function write(name: string, content: string | Uint8Array): string {
  writeFileSync(join(folder, name), content);
  return name;
}

function faultOf(name: string) {
  const read = readJsonFile(name, folder);
  if (read.ok) throw new Error(`${name} was read`);
  return read.faults[0];
}

test("a file is read with its text; a byte order mark is no part of it", () => {
  const read = readJsonFile(write("sound.json", '\ufeff{"a": "é"}'), folder);
  expect(read).toEqual({ ok: true, value: { text: '{"a": "é"}', content: { a: "é" } } });
});

test("broken JSON is told with line, column and what stands there", () => {
  const fault = faultOf(write("broken.json", '{\n  "a": 1,\n}'));
  expect(fault?.code).toBe("file-not-json");
  expect(fault?.sentence).toContain('in line 3, column 1 stands "}", where a key in double quotes must stand');
  expect(faultOf(write("empty.json", ""))?.sentence).toContain("line 1, column 1 stands the end of the file");
});

test("a file of 200 MB is refused by its size, before it is read", () => {
  const name = write("large.json", "");
  truncateSync(join(folder, name), 200 * 2 ** 20);
  const before = process.memoryUsage().arrayBuffers;
  expect(faultOf(name)?.sentence).toContain("has 200 MB; more than 32 MB is not read");
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(2 ** 20);
});

test("what is no file is told apart", () => {
  mkdirSync(join(folder, "drawer"));
  expect(faultOf("drawer")?.code).toBe("file-directory");
  expect(faultOf("nowhere.json")?.code).toBe("file-missing");
  expect(faultOf("nowhere/else.json")?.code).toBe("file-missing");
  expect(faultOf(write("latin.json", new Uint8Array([0x22, 0xe9, 0x22])))?.code).toBe("file-not-utf8");
});

test.skipIf(process.platform === "win32")("a device is refused and not read", () => {
  expect(faultOf("/dev/zero")?.code).toBe("file-no-regular-file");
});

test("a name that would steer the terminal is shown harmless", () => {
  expect(faultOf(`\u001b[2J.json`)?.sentence).toBe('There is no file "\\u{1b}[2J.json".');
});
