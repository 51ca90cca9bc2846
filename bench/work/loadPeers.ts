import type { Peer } from "./comparePeers.ts";
import { loadMinizinc } from "./minizinc.ts";
import { solveTimeIndexed } from "./timeIndexed.ts";

/** The peers named, and a message for each that cannot be run here. */
export async function loadPeers(names: readonly string[], minizincFolder?: string) {
  const peers: Peer[] = [];
  const messages: string[] = [];
  for (const name of names) {
    if (name === "highs") peers.push({ name, solve: solveTimeIndexed, close: async () => {} });
    else if (name === "minizinc") {
      const peer = await loadMinizinc(minizincFolder);
      if (peer) peers.push(peer);
      else
        messages.push("minizinc is left out: it is not installed (npm install --no-save minizinc, or --minizinc DIR)");
    } else messages.push(`${name} is left out: the peers are highs and minizinc`);
  }
  return { peers, messages };
}
