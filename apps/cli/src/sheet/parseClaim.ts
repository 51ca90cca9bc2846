import { InvalidArgumentError } from "commander";
import { type Claim, MONEY_CLAIMS } from "halfloaf/sheet";
import { findPrice } from "../input/findPrice.ts";
import { type Found, refuse } from "../words/Fault.ts";
import { quote } from "../words/valueWords.ts";

const KINDS: readonly Claim["kind"][] = ["plate", "day", "ready", "hands-on", "waste"];

/** A claim as it was asked for; money is read once the currency is known. */
export interface AskedClaim {
  readonly kind: Claim["kind"];
  readonly below: string;
}

/** A kind of claim and its bound, `plate=2.00` or `ready=30`; anything else is refused. */
export function parseClaim(text: string): AskedClaim {
  const [kind = "", below = "", ...rest] = text.split("=");
  const found = KINDS.find((one) => one === kind);
  if (found !== undefined && rest.length === 0 && below !== "") return { kind: found, below };
  throw new InvalidArgumentError(`${quote(text)} is no claim. Write it as KIND=BOUND with one of ${KINDS.join(", ")}.`);
}

/** The claim with its bound in minor units or minutes. */
export function toClaim({ kind, below }: AskedClaim, currency: string): Found<Claim> {
  if (MONEY_CLAIMS.includes(kind)) {
    const price = findPrice(below, currency, `--claim ${kind}=${below}`);
    return price.ok ? { ok: true, value: { kind, below: price.value } } : price;
  }
  if (/^\d{1,4}$/.test(below) && Number(below) > 0) return { ok: true, value: { kind, below: Number(below) } };
  return refuse({
    code: "claim-minutes",
    path: [],
    value: quote(below),
    sentence: `${quote(below)} is no number of minutes.`,
    remedy: `Write whole minutes, such as --claim ${kind}=30.`,
  });
}
