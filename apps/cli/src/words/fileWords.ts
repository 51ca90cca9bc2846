import type { Fault } from "./Fault.ts";
import { quote } from "./valueWords.ts";

/** Why a file can't be read as data; `name` is what the user called it. */
export type FileTrouble =
  | { readonly kind: "missing" }
  | { readonly kind: "directory" }
  | { readonly kind: "no-regular-file" }
  | { readonly kind: "too-large"; readonly bytes: number; readonly mostBytes: number }
  | { readonly kind: "not-utf8" }
  | { readonly kind: "empty" }
  | { readonly kind: "not-text" }
  | {
      readonly kind: "not-json";
      readonly line: number;
      readonly column: number;
      readonly expected: string;
      readonly found: string;
    }
  | { readonly kind: "system"; readonly code: string };

/** What is wrong with a file, and what to do about it. */
export function tellFileTrouble(name: string, trouble: FileTrouble): Fault {
  const file = quote(name);
  const fault = (sentence: string, remedy: string, rest: Partial<Fault> = {}): Fault => ({
    code: `file-${trouble.kind}`,
    path: [],
    sentence,
    remedy,
    ...rest,
  });
  switch (trouble.kind) {
    case "missing":
      return fault(`There is no file ${file}.`, "Check the spelling and the folder you are in.");
    case "directory":
      return fault(`${file} is a folder, not a file.`, "Name the file in it.");
    case "no-regular-file":
      return fault(
        `${file} is a device or a pipe, not a file on a disk.`,
        "Save what it gives as a file and name that.",
      );
    case "too-large":
      return fault(
        `${file} has ${toMegabytes(trouble.bytes)} MB; more than ${toMegabytes(trouble.mostBytes)} MB is not read.`,
        "Check that it is the file you mean: a kitchen of a thousand packs has less than 1 MB.",
      );
    case "not-utf8":
      return fault(
        `${file} is not text in UTF-8.`,
        "Save it as UTF-8 in your editor, or check that it is a text file.",
      );
    case "empty":
      return fault(`${file} holds nothing.`, "Check that it was saved whole, or name another file.");
    case "not-text":
      return fault(
        `${file} is no text: a picture, a PDF or some other binary file.`,
        "Copy the text out of it into a file of its own and name that.",
      );
    case "not-json":
      return fault(
        `${file} is not JSON: in line ${trouble.line}, column ${trouble.column} stands ${trouble.found}, where ${trouble.expected} must stand.`,
        "Mend that place; JSON knows no comments and no comma before a closing bracket.",
        { line: trouble.line, value: trouble.found },
      );
    case "system":
      return fault(
        `${file} can't be read (${trouble.code}).`,
        "Check that you may read it and that its disk is there.",
      );
  }
}

function toMegabytes(bytes: number): string {
  return (bytes / 2 ** 20).toFixed(bytes < 10 * 2 ** 20 ? 1 : 0);
}
