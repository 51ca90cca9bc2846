import { loadSurely } from "../loading/loadSurely.ts";

/** The files of starter data that stand beside the app. */
export type StarterName = `${"foods" | "dishes" | "beginnings"}.${"" | "de."}json`;

const asked = new Map<StarterName, Promise<unknown>>();

/** Fetches a file of starter data once, ahead of whoever reads it, and surely: it never fails. */
export function fetchStarter(name: StarterName): Promise<unknown> {
  const known = asked.get(name);
  if (known !== undefined) return known;
  const fresh = loadSurely(() => fetchJson(name));
  asked.set(name, fresh);
  return fresh;
}

async function fetchJson(name: StarterName): Promise<unknown> {
  const response = await fetch(`/${name}`);
  if (!response.ok) throw new Error(`${name}: ${response.status}`);
  return response.json();
}
