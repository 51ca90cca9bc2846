/** The files of starter data that stand beside the app. */
export type StarterName = `${"foods" | "dishes" | "beginnings"}.${"" | "de."}json`;

const asked = new Map<StarterName, Promise<unknown>>();

/** Fetches a file of starter data once, ahead of whoever reads it; a failure is not remembered, so that it can be tried again. */
export function fetchStarter(name: StarterName): Promise<unknown> {
  const known = asked.get(name);
  if (known !== undefined) return known;
  const fresh = fetchJson(name);
  asked.set(name, fresh);
  fresh.catch(() => asked.delete(name));
  return fresh;
}

async function fetchJson(name: StarterName): Promise<unknown> {
  const response = await fetch(`/${name}`);
  if (!response.ok) throw new Error(`${name}: ${response.status}`);
  return response.json();
}
