import { KitchenSync, type Role, type Socket, type SyncView, toSyncMemory } from "@halfloaf/keep/sync";
import type { KitchenSession } from "../kitchen/KitchenSession.ts";
import { markKeyOf, readShared, type Shared, writeShared } from "./shared.ts";

/** Who is at this device and on which screen. */
interface Place {
  readonly by?: string;
  readonly at?: string;
}

/** What one tab asks of the one that talks: to tell how things stand, or to offer again what came back. */
type Asked = "tell" | "offer";

/**
 * The talk of the open kitchen with its server. Of several tabs one talks, the others see through it how things stand; when
 * it is closed, another goes on.
 */
class SyncRun {
  #view: SyncView | undefined;
  #sync: KitchenSync | undefined;
  #channel: BroadcastChannel | undefined;
  #place: Place = {};
  readonly #hearers = new Set<() => void>();

  /** How things stand; undefined while no shared kitchen is open. */
  get view(): SyncView | undefined {
    return this.#view;
  }

  subscribe = (hearer: () => void): (() => void) => {
    this.#hearers.add(hearer);
    return () => this.#hearers.delete(hearer);
  };

  /** Tries at once where it is waiting. */
  tryNow = (): void => {
    if (document.visibilityState === "visible") this.#sync?.tryNow();
  };

  /** Offers again what the server sent back, by whichever tab talks with it. */
  offerAgain(): void {
    if (this.#sync === undefined) this.#channel?.postMessage("offer" satisfies Asked);
    else this.#sync.offerAgain();
  }

  sayPlace(place: Place): void {
    this.#place = place;
    this.#sync?.sayPlace(place);
  }

  /** Talks for a kitchen until what it gives is called. */
  start(session: KitchenSession, id: string, shared: Shared): () => void {
    const ending = new AbortController();
    const { signal } = ending;
    const channel = new BroadcastChannel(`halfloaf-sharing-${id}`);
    const show = (view: SyncView): void => {
      const role = view.role ?? readShared(id)?.role;
      if (role !== undefined) remember(id, role);
      this.#set(role === undefined ? view : { ...view, role });
    };
    this.#channel = channel;
    channel.onmessage = ({ data }: MessageEvent<SyncView | Asked>) => {
      if (typeof data !== "string") {
        // What the tab that talked before said last is not how things stand for the one that talks now.
        if (this.#sync === undefined) show(data);
      } else if (data === "offer") this.#sync?.offerAgain();
      else if (this.#sync !== undefined) channel.postMessage(this.#sync.view);
    };
    channel.postMessage("tell" satisfies Asked);
    addEventListener("online", this.tryNow, { signal });
    document.addEventListener("visibilitychange", this.tryNow, { signal });
    const talk = (): Promise<void> => {
      const memory = toSyncMemory(localStorage, markKeyOf(id));
      const openSocket = (url: string): Socket => new WebSocket(url) as unknown as Socket;
      const sync = new KitchenSync(session.kept, shared, { openSocket, memory });
      this.#sync = sync;
      const end = sync.subscribe(() => {
        show(sync.view);
        channel.postMessage(sync.view);
      });
      sync.sayPlace(this.#place);
      sync.start();
      return new Promise((resolve) => {
        const stop = (): void => {
          end();
          sync.stop();
          if (this.#sync === sync) this.#sync = undefined;
          resolve();
        };
        if (signal.aborted) stop();
        else signal.addEventListener("abort", stop);
      });
    };
    // Without HTTPS a browser has no locks; then each tab talks, which costs space and nothing else.
    if (navigator.locks === undefined) void talk();
    else void navigator.locks.request(`halfloaf-sharing-${id}`, { signal }, talk).catch(() => {});
    return () => {
      ending.abort();
      channel.close();
      if (this.#channel === channel) this.#channel = undefined;
      this.#set(undefined);
    };
  }

  #set(view: SyncView | undefined): void {
    this.#view = view;
    for (const hearer of this.#hearers) hearer();
  }
}

/** Remembers what this device may do, which holds also when the kitchen is opened next without a network. */
function remember(id: string, role: Role): void {
  const known = readShared(id);
  if (known !== undefined && known.role !== role) writeShared(id, { ...known, role });
}

/** The one talk that there is, since one kitchen is open at a time. */
export const syncRun = new SyncRun();
