import { type ReactNode, Suspense } from "react";
import { Loading } from "./Loading.tsx";

interface AwaitedProps {
  /** True where nothing is said while it is on its way; that it is late is said in any case. */
  readonly isQuiet?: boolean;
  /** True for what nobody asked for: its absence is not worth a word, and it comes by itself. */
  readonly isBeside?: boolean;
  readonly children: ReactNode;
}

/** A place whose content, or what it says, may still be on its way: what is around it stands meanwhile. */
export function Awaited({ isQuiet = false, isBeside = false, children }: AwaitedProps): ReactNode {
  return <Suspense fallback={isBeside ? null : <Loading isQuiet={isQuiet} />}>{children}</Suspense>;
}
