import { useEffect } from "react";

/** Keeps the screen awake while it is wanted and shown; a browser that can't, or a person who won't, loses nothing else. */
export function useWakeLock(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !("wakeLock" in navigator)) return undefined;
    let lock: WakeLockSentinel | undefined;
    const take = (): void => {
      if (document.visibilityState !== "visible") return;
      navigator.wakeLock.request("screen").then(
        (taken) => {
          lock = taken;
        },
        () => {},
      );
    };
    take();
    document.addEventListener("visibilitychange", take);
    return () => {
      document.removeEventListener("visibilitychange", take);
      void lock?.release();
    };
  }, [isWanted]);
}
