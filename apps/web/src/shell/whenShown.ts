const MOST_MS = 10_000;

/** Resolves once a screen stands in that place, as it does by its title, and is not only on its way; at the latest after 10 s. */
export function whenShown(place: Element): Promise<void> {
  const isShown = (): boolean => place.querySelector("main h1") !== null;
  if (isShown()) return Promise.resolve();
  return new Promise((resolve) => {
    // A screen that still waits for a part of itself is there for a moment and taken away again.
    const watcher = new MutationObserver(() => isShown() && requestAnimationFrame(() => isShown() && end()));
    const timer = setTimeout(end, MOST_MS);
    watcher.observe(place, { childList: true, subtree: true });

    function end(): void {
      watcher.disconnect();
      clearTimeout(timer);
      resolve();
    }
  });
}
