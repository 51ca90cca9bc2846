import fc from "fast-check";
import { ConstraintModel } from "./ConstraintModel.ts";
import { atLeast, FLIP, type Literal, TRUE, VALUE, ZERO } from "./literal.ts";

/** A small model of every kind of rule: a few variables and switches, and rules drawn over them. */
export const randomModel: fc.Arbitrary<ConstraintModel> = fc
  .record({
    highs: fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 3, maxLength: 4 }),
    switches: fc.integer({ min: 1, max: 2 }),
    seed: fc.infiniteStream(fc.nat(1 << 20)),
    counts: fc.tuple(fc.nat(5), fc.nat(3), fc.nat(2), fc.nat(2), fc.nat(1)),
  })
  .map(({ highs, switches, seed, counts }) => {
    const draw = (below: number) => (seed.next().value as number) % below;
    const model = new ConstraintModel();
    const variables = highs.map((high) => model.addVariable(0, high));
    const flags = Array.from({ length: switches }, () => model.addSwitch());
    const variable = () => variables[draw(variables.length)] as number;
    const literal = (): Literal => {
      const own = draw(3) === 0 ? (flags[draw(flags.length)] as number) : atLeast(variable(), 1 + draw(5));
      return draw(2) === 0 ? own : own ^ FLIP;
    };
    const condition = () => (draw(2) === 0 ? TRUE : (flags[draw(flags.length)] as number) ^ (draw(2) === 0 ? FLIP : 0));
    const [edges, clauses, limits, cumulatives, energies] = counts;
    for (let k = 0; k < edges; k++) model.addEdge(variable(), variable(), draw(6) - 3, condition());
    for (let k = 0; k < clauses; k++) {
      const all = [literal(), literal(), literal()].filter((each) => isOpen(model, each));
      if (all.length > 0) model.addClause(all);
    }
    for (let k = 0; k < limits; k++) {
      const terms = variables.map((each) => ({ variable: each, weight: draw(5) - 2 }));
      model.addLimit(terms, draw(8) - 2);
    }
    for (let k = 0; k < cumulatives; k++) {
      const capacity = 1 + draw(3);
      model.addCumulative(
        capacity,
        variables.map((start) => {
          const end = draw(4) === 0 ? variable() : start;
          return { start, startOffset: 0, end, endOffset: 1 + draw(3), demand: 1 + draw(2), when: condition() };
        }),
      );
    }
    for (let k = 0; k < energies; k++) {
      const work = variables.map((start) => ({ start, minutes: 1 + draw(3), demand: 1 + draw(2), when: condition() }));
      const capacity = 2 + draw(2);
      model.addEnergyLimit(capacity, work);
      model.addCumulative(
        capacity,
        work.map(({ start, minutes, demand, when }) => ({
          start,
          startOffset: 0,
          end: start,
          endOffset: minutes,
          demand,
          when,
        })),
      );
    }
    return model;
  });

function isOpen(model: ConstraintModel, literal: Literal): boolean {
  const v = literal >>> 17;
  const plain = (literal & 0x10000) === 0 ? literal : literal ^ FLIP;
  const value = (plain & VALUE) - ZERO;
  return value > (model.lows[v] as number) && value <= (model.highs[v] as number);
}

/** True where the values keep every rule, looked at one by one. */
export function holds(model: ConstraintModel, values: ArrayLike<number>): boolean {
  const at = (v: number) => values[v] as number;
  const isTrue = (literal: Literal) => {
    const value = (literal & VALUE) - ZERO;
    return (literal & 0x10000) === 0 ? at(literal >>> 17) >= value : -at(literal >>> 17) >= value;
  };
  const isWithin = model.lows.every((low, v) => low <= at(v) && at(v) <= (model.highs[v] as number));
  return (
    isWithin &&
    model.edges.every(({ from, to, lag, when }) => !isTrue(when) || at(to) >= at(from) + lag) &&
    model.clauses.every((clause) => clause.some(isTrue)) &&
    model.limits.every(({ terms, bound }) => terms.reduce((sum, t) => sum + t.weight * at(t.variable), 0) <= bound) &&
    model.cumulatives.every(({ capacity, intervals }) => {
      for (let t = -10; t < 30; t++) {
        const running = intervals.filter(
          (i) => isTrue(i.when) && at(i.start) + i.startOffset <= t && t < at(i.end) + i.endOffset,
        );
        if (running.reduce((sum, { demand }) => sum + demand, 0) > capacity) return false;
      }
      return true;
    })
  );
}

/** The least value of a variable over all assignments that keep the rules; undefined where none does. */
export function leastByTrying(model: ConstraintModel, objective: number): number | undefined {
  const values = model.lows.slice();
  let least: number | undefined;
  const tryFrom = (v: number): void => {
    if (v === values.length) {
      const value = values[objective] as number;
      if ((least === undefined || value < least) && holds(model, values)) least = value;
      return;
    }
    for (let x = model.lows[v] as number; x <= (model.highs[v] as number); x++) {
      values[v] = x;
      tryFrom(v + 1);
    }
  };
  tryFrom(0);
  return least;
}
