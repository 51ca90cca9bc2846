import type { LedgerRow } from "@halfloaf/keep";
import type { ReactNode } from "react";
import { useMayWrite } from "./useMayWrite.ts";

interface AllowedProps {
  /** The kind of rows that is written by what is within. */
  readonly to: LedgerRow["kind"];
  readonly children: ReactNode;
  /** What stands there instead; nothing unless said otherwise. */
  readonly otherwise?: ReactNode;
}

/** What writes into the kitchen, where this device may do that. */
export function Allowed({ to, children, otherwise = null }: AllowedProps): ReactNode {
  return useMayWrite(to) ? children : otherwise;
}
