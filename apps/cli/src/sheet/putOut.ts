import { statSync } from "node:fs";
import { dirname, extname, resolve } from "node:path";
import { harmless } from "../output/harmless.ts";
import type { Terminal } from "../output/Terminal.ts";
import { writeWhole } from "../output/writeWhole.ts";
import { type Fault, type Found, refuse } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";
import { drawPng } from "./drawPng.ts";
import { printPdf } from "./printPdf.ts";

/** Endings by what was made: the first is its own, the others it is turned into. */
const ENDINGS = {
  page: [".html", ".pdf"],
  picture: [".svg", ".png"],
  calendar: [".ics"],
  table: [".csv"],
  data: [".jsonld", ".json"],
} as const;
export type Made = keyof typeof ENDINGS;

/** Where a sheet goes. */
export interface OutWish {
  /** Absent: standard output. */
  readonly out?: string;
  /** True: a file that is there already is written over. */
  readonly over: boolean;
}

/** Why a file can't be written, before anything is made; undefined where nothing speaks against it. */
export function findOutFault(made: Made, { out, over }: OutWish, cwd: string): Fault | undefined {
  if (out === undefined) return undefined;
  const endings: readonly string[] = ENDINGS[made];
  if (!endings.includes(extname(out).toLowerCase())) {
    return tell(
      "out-ending",
      out,
      `has no ending that this can be written as`,
      `Name a file that ends in ${endings.join(" or ")}.`,
    );
  }
  const path = resolve(cwd, out);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (kind?.isFile() === false || (kind !== undefined && !over)) {
    return tell(
      "out-taken",
      out,
      "is there already; it is left as it is",
      "Name another file with --out, or add --over.",
    );
  }
  if (statSync(dirname(path), { throwIfNoEntry: false })?.isDirectory() !== true) {
    return tell(
      "out-no-folder",
      out,
      "lies in a folder that is not there",
      "Make it first, or name another file with --out.",
    );
  }
  return undefined;
}

/** Writes what was made into the file whose ending says as what, or prints it where none is named. */
export async function putOut(text: string, { out }: OutWish, terminal: Terminal): Promise<Found<unknown>> {
  if (out === undefined) {
    terminal.print(text.replace(/\r?\n$/, ""));
    return { ok: true, value: undefined };
  }
  const path = resolve(terminal.cwd, out);
  const ending = extname(out).toLowerCase();
  const turned: Found<string | Uint8Array> =
    ending === ".pdf"
      ? await printPdf(text, path, terminal)
      : ending === ".png"
        ? await drawPng(text)
        : { ok: true, value: text };
  if (!turned.ok) return turned;
  const trouble = writeWhole(turned.value, path);
  if (trouble !== undefined) {
    const remedy = "Check that you may write there and that the disk is not full, or name another file with --out.";
    return refuse(tell("out-not-written", out, `can't be written (${trouble})`, remedy));
  }
  terminal.talk(`Written to ${harmless(out)}.`);
  return { ok: true, value: undefined };
}

function tell(code: string, out: string, says: string, remedy: string): Fault {
  return { code, path: [], value: quote(out), sentence: `${quote(out)} ${says}.`, remedy };
}
