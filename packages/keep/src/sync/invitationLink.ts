import * as v from "valibot";
import { Credential, GivenName } from "./messages.ts";

/** What an invitation says: where the kitchen is and the code that lets one device in, once. */
export interface Invitation {
  /** Origin of the server, without a slash at its end. */
  readonly server: string;
  readonly kitchen: string;
  readonly code: string;
}

/**
 * The link of an invitation, which is also what its QR code holds. The secret stands behind the hash, so that no server and
 * no proxy is sent it when the link is opened.
 */
export function toInvitationLink({ server, kitchen, code }: Invitation): string {
  return `${server}/join#${kitchen}.${code}`;
}

/** Reads a link; undefined where it is no invitation. */
export function parseInvitationLink(text: string): Invitation | undefined {
  let url: URL;
  try {
    url = new URL(text.trim());
  } catch {
    return undefined;
  }
  if (!["https:", "http:"].includes(url.protocol) || url.pathname !== "/join") return undefined;
  const [kitchen = "", ...rest] = url.hash.slice(1).split(".");
  const code = rest.join(".");
  if (!v.is(GivenName, kitchen) || !v.is(Credential, code)) return undefined;
  return { server: url.origin, kitchen, code };
}
