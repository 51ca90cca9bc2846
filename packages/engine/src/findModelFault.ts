import type { LinearModel } from "halfloaf/menu/linear";

/** What is wrong with a model before any solver sees it, in one sentence; undefined where it is sound. */
export function findModelFault(model: LinearModel): string | undefined {
  const columns = new Set<string>();
  for (const { name, cost, lower, upper } of model.columns) {
    if (columns.has(name)) return `column "${name}" is stated twice`;
    columns.add(name);
    if (!Number.isFinite(cost)) return `column "${name}" costs ${cost}, which is no finite number`;
    if (Number.isNaN(lower) || Number.isNaN(upper)) return `column "${name}" has a bound that is no number`;
  }
  const rows = new Set<string>();
  for (const { name, lower, upper, entries } of model.rows) {
    if (rows.has(name)) return `row "${name}" is stated twice`;
    rows.add(name);
    if (Number.isNaN(lower) || Number.isNaN(upper)) return `row "${name}" has a bound that is no number`;
    const fault = findEntryFault(name, entries, columns);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function findEntryFault(
  row: string,
  entries: LinearModel["rows"][number]["entries"],
  columns: ReadonlySet<string>,
): string | undefined {
  const seen = new Set<string>();
  for (const [column, coefficient] of entries) {
    if (!columns.has(column)) return `row "${row}" names column "${column}", which the model does not have`;
    if (seen.has(column)) return `row "${row}" names column "${column}" twice`;
    seen.add(column);
    if (!Number.isFinite(coefficient)) {
      return `row "${row}" has coefficient ${coefficient} at column "${column}", which is no finite number`;
    }
  }
  return undefined;
}
