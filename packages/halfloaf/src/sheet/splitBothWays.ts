/**
 * Splits a total over rows and columns whose sums are given, each cell as near to its proportion as whole numbers can be:
 * every cell is its share rounded down or up, every row and every column adds up exactly.
 *
 * Shares are rounded down first; what is missing is then given out, one unit a cell, larger remainders first, along
 * augmenting paths, of which there are always enough since the shares themselves are such a table in fractions.
 * Throws where the sums of rows and of columns differ, or one is negative or not whole.
 * **Source**: Cox 1987, J. American Statistical Association 82 (controlled rounding); Ford and Fulkerson 1956.
 */
export function splitBothWays(rowSums: readonly number[], columnSums: readonly number[]): number[][] {
  const total = add(rowSums);
  if (
    [...rowSums, ...columnSums].some((each) => !Number.isSafeInteger(each) || each < 0) ||
    total !== add(columnSums)
  ) {
    throw new RangeError(`rows of ${rowSums.join(", ")} and columns of ${columnSums.join(", ")} make no table`);
  }
  if (total === 0) return rowSums.map(() => columnSums.map(() => 0));
  const [rows, columns, whole] = [rowSums.map(BigInt), columnSums.map(BigInt), BigInt(total)];
  const cells = rows.map((row) => columns.map((column) => Number((row * column) / whole)));
  const remainders = rows.map((row) => columns.map((column) => Number((row * column) % whole)));
  const raised = cells.map((row) => row.map(() => false));
  const missing = columnSums.map((sum, column) => sum - add(cells.map((row) => row[column] as number)));
  for (const [row, sum] of rowSums.entries()) {
    for (let units = sum - add(cells[row] as number[]); units > 0; units--) {
      if (!raise(row, { remainders, raised, missing }, new Set()))
        throw new Error("a table of whole numbers has no rounding");
    }
  }
  return cells.map((row, at) => row.map((cell, column) => cell + (raised[at]?.[column] ? 1 : 0)));
}

interface Rounding {
  readonly remainders: readonly (readonly number[])[];
  /** Cells that are rounded up. */
  readonly raised: boolean[][];
  /** Units that each column still lacks. */
  readonly missing: number[];
}

/** Rounds one more cell of the row up; where its column has all it needs, another row gives its own up there. */
function raise(row: number, rounding: Rounding, tried: Set<number>): boolean {
  const { remainders, raised, missing } = rounding;
  const own = raised[row] as boolean[];
  const rest = remainders[row] as readonly number[];
  const open = [...rest.keys()].filter((column) => (rest[column] as number) > 0 && !own[column]);
  open.sort((a, b) => (rest[b] as number) - (rest[a] as number) || a - b);
  for (const column of open) {
    if (tried.has(column)) continue;
    if ((missing[column] as number) > 0) {
      missing[column] = (missing[column] as number) - 1;
      own[column] = true;
      return true;
    }
    tried.add(column);
    for (const [other, cells] of raised.entries()) {
      if (!cells[column]) continue;
      cells[column] = false;
      if (raise(other, rounding, tried)) {
        own[column] = true;
        return true;
      }
      cells[column] = true;
    }
  }
  return false;
}

function add(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
