import { useEffect, useState } from "react";

/** The time in milliseconds since 1970, told anew every second while it is wanted. */
export function useNow(isWanted: boolean): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    if (!isWanted) return undefined;
    setNowMs(Date.now());
    const timer = setInterval(() => setNowMs(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [isWanted]);
  return nowMs;
}
