import { decodeText } from "@halfloaf/reading";

/** The text of a file, or why there is none. */
type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: "large" | "failed" };

/** As much as the command line takes too: 32 MB. */
const MOST_BYTES = 32 * 1024 * 1024;

/** Reads a file as text, in UTF-16 or UTF-8 where its bytes show it, else as Windows-1252. */
export async function readTextFile(file: Blob): Promise<FileText> {
  if (file.size > MOST_BYTES) return { ok: false, reason: "large" };
  try {
    return { ok: true, text: decodeText(new Uint8Array(await file.arrayBuffer())).text };
  } catch {
    return { ok: false, reason: "failed" };
  }
}
