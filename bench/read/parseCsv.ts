/**
 * The rows of a CSV text (RFC 4180: fields in quotes may hold commas, line ends and doubled quotes), each as the values
 * under the names of its first row. Throws where a row has more or fewer fields than the first.
 */
export function parseCsv(text: string): Record<string, string>[] {
  const [header = [], ...rows] = splitRows(text.replace(/^\uFEFF/, ""));
  return rows.map((row, at) => {
    if (row.length !== header.length) throw new Error(`row ${at + 1}: ${row.length} fields, not ${header.length}`);
    return Object.fromEntries(header.map((name, field) => [name, row[field] as string]));
  });
}

function splitRows(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain = "", end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g)) {
    row.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === ",") continue;
    if (row.length > 1 || row[0] !== "") rows.push(row);
    row = [];
  }
  return rows;
}
