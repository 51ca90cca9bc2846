import { BACKUP_VERSION } from "@halfloaf/keep";

/** A kitchen's log as a backup that every program of Halfloaf reads; rows are given as their texts. */
export function toExportText(rows: readonly string[], writtenAtMs: number): string {
  const head = JSON.stringify({ format: "halfloaf-backup", version: BACKUP_VERSION, writtenAtMs }).slice(0, -1);
  return `${head},"rows":[${rows.join(",")}]}\n`;
}
