import type { LinearModel, LinearOutcome } from "halfloaf/menu/linear";
import type { Highs, Model, ModelData, VariableType } from "highs";
import { findModelFault } from "./findModelFault.ts";
import { dropSolver, loadSolver } from "./loadSolver.ts";

/** Where a solve may stop early. An absent limit does not bind. */
export interface LinearLimits {
  /** Part of the objective by which a whole-number answer may miss the best one; absent means 0. */
  readonly relativeGap?: number;
  /** Seconds of solving; an answer that depends on it depends on the machine. */
  readonly timeS?: number;
}

const CONTINUOUS: VariableType = 0;
const INTEGER: VariableType = 1;

/**
 * Solves a linear or mixed-integer model with HiGHS.
 *
 * Whole-number columns come back as exact whole numbers. The same model gives the same answer each time unless
 * `timeS` cuts it short. A faulty model or a limit reached is `failed` with its reason; nothing is thrown.
 * **Source**: Huangfu and Hall 2018, Mathematical Programming Computation 10, 119-142.
 */
export async function solveLinear(model: LinearModel, limits: LinearLimits = {}): Promise<LinearOutcome> {
  const fault = findModelFault(model);
  if (fault !== undefined) return { status: "failed", reason: fault };
  if (model.columns.length === 0) return solveEmpty(model);
  try {
    const highs = await loadSolver();
    return highs.withModel(toModelData(model, highs.infinity), (solver) => {
      solver.options.set({ output_flag: false, mip_rel_gap: limits.relativeGap ?? 0, mip_abs_gap: 1e-9 });
      if (limits.timeS !== undefined) solver.options.set("time_limit", limits.timeS);
      return run(highs, solver, model);
    });
  } catch (error) {
    dropSolver();
    return { status: "failed", reason: error instanceof Error ? error.message : String(error) };
  }
}

/** A model without columns is settled by its rows alone; the solver has a status of its own for it. */
function solveEmpty(model: LinearModel): LinearOutcome {
  if (model.rows.some(({ lower, upper }) => lower > 0 || upper < 0)) return { status: "impossible" };
  return {
    status: "optimal",
    objective: 0,
    values: new Map(),
    rowDuals: new Map(model.rows.map((row) => [row.name, 0])),
  };
}

function toModelData(model: LinearModel, infinity: number): ModelData {
  const columnAt = new Map(model.columns.map(({ name }, at) => [name, at]));
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { entries } of model.rows) {
    for (const [column, coefficient] of entries) {
      indices.push(columnAt.get(column) as number);
      values.push(coefficient);
    }
    starts.push(indices.length);
  }
  const bound = (value: number) => Math.min(infinity, Math.max(-infinity, value));
  const hasInteger = model.columns.some(({ integer }) => integer);
  return {
    numCols: model.columns.length,
    numRows: model.rows.length,
    colCost: model.columns.map(({ cost }) => cost),
    colLower: model.columns.map(({ lower }) => bound(lower)),
    colUpper: model.columns.map(({ upper }) => bound(upper)),
    rowLower: model.rows.map(({ lower }) => bound(lower)),
    rowUpper: model.rows.map(({ upper }) => bound(upper)),
    matrix: { format: "csr", numRows: model.rows.length, numCols: model.columns.length, starts, indices, values },
    ...(hasInteger ? { integrality: model.columns.map(({ integer }) => (integer ? INTEGER : CONTINUOUS)) } : {}),
  };
}

function run(highs: Highs, solver: Model, model: LinearModel): LinearOutcome {
  const { modelStatus } = highs.constants;
  solver.run();
  let status = solver.getModelStatus();
  if (status === modelStatus.unboundedOrInfeasible) {
    // Presolve saw that one of the two holds but not which; the plain simplex tells them apart.
    solver.options.set("presolve", "off");
    solver.run();
    status = solver.getModelStatus();
  }
  if (status === modelStatus.optimal) return readOptimum(solver, model);
  if (status === modelStatus.infeasible) return { status: "impossible" };
  if (status === modelStatus.unbounded) return { status: "unbounded" };
  const name = Object.entries(modelStatus).find(([, code]) => code === status)?.[0] ?? String(status);
  return { status: "failed", reason: `the solver stopped with status ${name}` };
}

function readOptimum(solver: Model, model: LinearModel): LinearOutcome {
  const { colValue, rowDual } = solver.getSolution();
  const values = new Map(
    model.columns.map(({ name, integer }, at) => {
      const value = colValue[at] as number;
      return [name, integer ? Math.round(value) : value];
    }),
  );
  const objective = solver.getObjectiveValue();
  if (model.columns.some(({ integer }) => integer)) return { status: "optimal", objective, values };
  const rowDuals = new Map(model.rows.map(({ name }, at) => [name, rowDual[at] as number]));
  return { status: "optimal", objective, values, rowDuals };
}
