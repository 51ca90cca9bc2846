/** What is known of an instance: its shortest length between two bounds (equal = closed), or that there is none. */
export type Reference = { readonly lower: number; readonly upper: number } | "unsat";

/** Reads `problem,optimum` rows: a number, `lower..upper` with either end left out where open, or `unsat`. */
export function readReferences(text: string): Map<string, Reference> {
  const references = new Map<string, Reference>();
  for (const line of text.split(/\r?\n/).slice(1)) {
    const [name, value] = line.split(",").map((cell) => cell.trim());
    if (!name || !value) continue;
    const [lower, upper] = value.includes("..") ? value.split("..") : [value, value];
    references.set(
      name.toLowerCase(),
      value === "unsat"
        ? "unsat"
        : { lower: lower ? Number(lower) : 0, upper: upper ? Number(upper) : Number.POSITIVE_INFINITY },
    );
  }
  return references;
}
