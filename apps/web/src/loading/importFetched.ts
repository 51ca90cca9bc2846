// Named apart, or else the bundler takes each address below for a file of the sources.
const here = import.meta.url;
const fetching = new Map<string, Promise<unknown>>();

/**
 * Imports a chunk of the app, with the others that it takes. A browser may remember that a script could not be had, and never ask
 * for it again in that page: so as long as no service worker keeps the app, all of them are fetched first, which may be tried
 * again, and imported once they are on the device. The build puts this wherever a part of the app is imported when it is
 * wanted (`importsFetched`). Rejected where one of them can't be had.
 */
export async function importFetched<Loaded>(load: () => Promise<Loaded>, others: readonly string[]): Promise<Loaded> {
  const [, , own = ""] = /import\((["'`])(.+?)\1\)/.exec(load.toString()) ?? [];
  const addresses = others.map((file) => new URL(`/${file}`, here).href);
  if (own !== "") addresses.push(new URL(own, here).href);
  const keeper = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  if (keeper?.controller) askAlong(addresses);
  else await Promise.all(addresses.map(fetchOnce));
  return load();
}

function fetchOnce(address: string): Promise<unknown> {
  const known = fetching.get(address);
  if (known !== undefined) return known;
  const fresh = fetchWhole(address);
  fetching.set(address, fresh);
  fresh.catch(() => fetching.delete(address));
  return fresh;
}

async function fetchWhole(address: string): Promise<void> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  await response.arrayBuffer();
}

/** They come from the device, all at once rather than one after the other as each names the next. */
function askAlong(addresses: readonly string[]): void {
  for (const address of addresses) {
    if (fetching.has(address)) continue;
    fetching.set(address, Promise.resolve());
    const link = document.createElement("link");
    link.rel = "modulepreload";
    link.href = address;
    document.head.append(link);
  }
}
