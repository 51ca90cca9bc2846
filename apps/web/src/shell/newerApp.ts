const ASK_AGAIN_MS = 60 * 60 * 1000;

/**
 * Keeps the app on the device by its service worker, and knows whether a newer one is there. A newer one waits until it is
 * asked for: the page is never loaded again under the hand.
 */
class NewerApp {
  #isThere = false;
  #wasAsked = false;
  #registration: ServiceWorkerRegistration | undefined;
  readonly #hearers = new Set<() => void>();

  /** True once a newer app can be loaded. */
  get isThere(): boolean {
    return this.#isThere;
  }

  subscribe = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  /** Begins to keep the app on the device; where the browser can't, the app is there as long as its server is. */
  async start(): Promise<void> {
    const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;
    if (workers === undefined) return;
    let isFirst = workers.controller === null;
    workers.addEventListener("controllerchange", () => {
      if (this.#wasAsked) location.reload();
      else if (!isFirst) this.#tell();
      isFirst = false;
    });
    try {
      this.#watch(await workers.register("/sw.js"));
    } catch {
      // A browser that refuses (a private window) has the app from its server alone.
    }
  }

  /** Loads the newer app, for this is when it is asked for. */
  load(): void {
    this.#wasAsked = true;
    const waiting = this.#registration?.waiting;
    // Where another tab has asked for it already, nothing waits any more.
    if (waiting) waiting.postMessage({ type: "SKIP_WAITING" });
    else location.reload();
  }

  #watch(registration: ServiceWorkerRegistration): void {
    this.#registration = registration;
    if (registration.waiting) this.#tell();
    registration.addEventListener("updatefound", () => {
      const coming = registration.installing;
      coming?.addEventListener("statechange", () => {
        // The first one of all waits for nobody and is not newer than the page.
        if (coming.state === "installed" && registration.active) this.#tell();
      });
    });
    let askedAtMs = Date.now();
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState !== "visible" || Date.now() - askedAtMs < ASK_AGAIN_MS) return;
      askedAtMs = Date.now();
      registration.update().catch(() => {
        // Without a network there is nothing newer.
      });
    });
  }

  #tell(): void {
    this.#isThere = true;
    for (const hearer of this.#hearers) hearer();
  }
}

/** The newer app of this page. */
export const newerApp = new NewerApp();
