/** Work may go on for so long before others get a turn: a phone four times as slow as a laptop still answers at once. */
const TURN_MS = 6;

let begunMs = 0;

/** Lets taps and paints through where there was no turn for them for a while: awaited between the steps of what takes long. */
export async function rest(): Promise<void> {
  if (performance.now() - begunMs < TURN_MS) return;
  await giveTurn();
  begunMs = performance.now();
}

/** Goes on once whatever waits for the thread has had it. */
export function giveTurn(): Promise<void> {
  const { scheduler } = globalThis as { readonly scheduler?: { readonly yield?: () => Promise<void> } };
  if (scheduler?.yield !== undefined) return scheduler.yield();
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => resolve();
    port2.postMessage(undefined);
  });
}
