import { toMemory } from "../output/memory.testing.ts";
import type { Terminal } from "../output/Terminal.ts";
import { runCommands } from "../runCommands.ts";

/** Runs `halfloaf read` in a folder and gives what it answered; `over` replaces parts of the terminal. */
export async function runRead(cwd: string, words: readonly string[], width = 80, over: Partial<Terminal> = {}) {
  const memory = toMemory(cwd, width);
  const code = await runCommands(["read", ...words], "0.0.1", { ...memory, ...over });
  const printed = memory.printed.join("\n");
  const flat = printed.replace(/\s+/g, " ");
  const talked = memory.talked.join("\n");
  return {
    code,
    lines: memory.printed.flatMap((text) => text.split("\n")),
    printed,
    flat,
    talked,
    told: talked.replace(/\s+/g, " "),
  };
}

/** A dish as somebody would paste it; made up. */
export const PASTED_DISH = `Leek and oat soup of the quay
Serves 4

2 tbsp vegetable oil
300 g leek, sliced
50 g rolled oats
750 ml water
1 tin chickpeas
30 g zanzibble root

Method
Heat the oil in a pot and fry the leek for 8 minutes.
Add the water and oats, bring to the boil, then simmer for 15 minutes.
Add the chickpeas and cook for 5 minutes. Serve hot.
`;

/** What settles all that is open in it. */
export const SETTLED = ["--amount", "5=240 g", "--leave-out", "6"] as const;

/** A receipt of a shop of Port Ansel; made up. */
export const PASTED_RECEIPT = `TALLY STORE
Quay 3
28.11.2026 18:05
Rolled oats, 500 g       0.85
LG RICE 1KG              1.59
Sponge                   0.99
TOTAL                    3.43
CASH                     4.00
`;
