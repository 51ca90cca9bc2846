import GLPK, { type GLPK as Glpk, type LP } from "glpk.js/node";
import type { LinearModel, LinearOutcome } from "halfloaf/menu/linear";
import { findModelFault } from "../findModelFault.ts";

let runtime: Promise<Glpk> | undefined;

/** A second solver behind the port, for comparison in tests only. `seconds` is its time limit. */
export async function solveWithGlpk(model: LinearModel, seconds = 60): Promise<LinearOutcome> {
  const reason = findModelFault(model);
  if (reason !== undefined) return { status: "failed", reason };
  if (contradictsItself(model)) return { status: "impossible" };
  runtime ??= Promise.resolve(GLPK());
  const glpk = await runtime;
  const hasInteger = model.columns.some(({ integer }) => integer);
  // With its presolve a continuous model that is impossible comes back as undefined; whole numbers need it.
  const options = { msglev: glpk.GLP_MSG_OFF, presol: hasInteger, tmlim: seconds };
  let result: Awaited<ReturnType<Glpk["solve"]>>["result"];
  try {
    ({ result } = await glpk.solve(toLp(glpk, model), options));
  } catch (error) {
    // Its WASM build aborts on some models; what is left of it then is of no more use.
    runtime = undefined;
    return { status: "failed", reason: error instanceof Error ? error.message : String(error) };
  }
  if (result.status === glpk.GLP_OPT) {
    const values = new Map(
      model.columns.map(({ name, integer }) => [
        name,
        integer ? Math.round(result.vars[name] as number) : (result.vars[name] as number),
      ]),
    );
    const duals = result.dual;
    if (hasInteger || duals === undefined) return { status: "optimal", objective: result.z, values };
    return {
      status: "optimal",
      objective: result.z,
      values,
      rowDuals: new Map(model.rows.map(({ name }) => [name, duals[name] as number])),
    };
  }
  if (result.status === glpk.GLP_NOFEAS || (hasInteger && result.status === glpk.GLP_UNDEF))
    return { status: "impossible" };
  if (result.status === glpk.GLP_UNBND) return { status: "unbounded" };
  return { status: "failed", reason: `the solver stopped with status ${result.status}` };
}

/** The second solver neither takes a model without columns nor says of crossed bounds that they are impossible. */
function contradictsItself({ columns, rows }: LinearModel): boolean {
  return (
    [...columns, ...rows].some(({ lower, upper }) => lower > upper) ||
    rows.some(({ entries, lower, upper }) => entries.length === 0 && (lower > 0 || upper < 0))
  );
}

function toLp(glpk: Glpk, model: LinearModel): LP {
  return {
    name: "model",
    objective: {
      direction: glpk.GLP_MIN,
      name: "cost",
      vars: model.columns.map(({ name, cost }) => ({ name, coef: cost })),
    },
    subjectTo: model.rows.map(({ name, lower, upper, entries }) => ({
      name,
      vars: entries.map(([column, coef]) => ({ name: column, coef })),
      bnds: toBounds(glpk, lower, upper),
    })),
    bounds: model.columns.map(({ name, lower, upper }) => ({ name, ...toBounds(glpk, lower, upper) })),
    generals: model.columns.flatMap(({ name, integer }) => (integer ? [name] : [])),
  };
}

function toBounds(glpk: Glpk, lower: number, upper: number): { type: number; lb: number; ub: number } {
  const lb = Number.isFinite(lower) ? lower : 0;
  const ub = Number.isFinite(upper) ? upper : 0;
  if (lower === upper) return { type: glpk.GLP_FX, lb, ub };
  if (Number.isFinite(lower)) return { type: Number.isFinite(upper) ? glpk.GLP_DB : glpk.GLP_LO, lb, ub };
  return { type: Number.isFinite(upper) ? glpk.GLP_UP : glpk.GLP_FR, lb, ub };
}
