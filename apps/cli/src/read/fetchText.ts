import { type Found, refuse } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";
import { gatherBytes } from "./gatherBytes.ts";

const MOST_MS = 20_000;

/**
 * Fetches one page, within 20 s and up to so many bytes. Nothing it names is fetched after it. Every trouble comes back as
 * a fault: no connection, an answer that is none, another kind of content than text.
 */
export async function fetchText(address: string, mostBytes: number): Promise<Found<Uint8Array>> {
  try {
    const answer = await fetch(address, {
      signal: AbortSignal.timeout(MOST_MS),
      headers: { accept: "text/html, application/json, text/plain" },
    });
    if (!answer.ok) return refuseFetch(address, `answers with the status ${answer.status}`);
    const kind = answer.headers.get("content-type") ?? "text/html";
    if (!/^(?:text\/|application\/(?:ld\+)?json|application\/xhtml)/i.test(kind))
      return refuseFetch(address, "is no page of text");
    const bytes = answer.body === null ? new Uint8Array(0) : await gatherBytes(answer.body, mostBytes);
    if (bytes.length > mostBytes) return refuseFetch(address, `is larger than ${Math.round(mostBytes / 2 ** 20)} MB`);
    return { ok: true, value: bytes };
  } catch (error) {
    const { name, cause } = error as Error & { cause?: { code?: string } };
    return refuseFetch(
      address,
      name === "TimeoutError" ? "did not answer within 20 seconds" : `can't be reached (${cause?.code ?? name})`,
    );
  }
}

function refuseFetch(address: string, says: string) {
  return refuse({
    code: "fetch-failed",
    path: [],
    value: quote(address),
    sentence: `${quote(address)} ${says}.`,
    remedy: "Check the address, or save the page in your browser and name the file.",
  });
}
