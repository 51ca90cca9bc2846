import { describe, expect, it } from "vitest";
import { LimitWeights } from "./LimitWeights.ts";
import { FIRST_PENALTIES, LIMIT_KINDS, type Penalties } from "./Penalties.ts";

function adaptOften(weights: LimitWeights, isBroken: (kind: keyof Penalties) => boolean): Penalties {
  while (weights.adapt(isBroken, true));
  return weights.penalties;
}

describe("the weights of limits", () => {
  it("ease to a tenth where a little breaks them, loads and trips to other shares, and never below the first elsewhere", () => {
    const eased = adaptOften(new LimitWeights(FIRST_PENALTIES), () => false);
    const shares: Partial<Penalties> = { minute: 0.1, elapsed: 0.1, energy: 0.1, use: 0.1, main: 0.1, distinct: 0.1 };
    const wanted: Partial<Penalties> = { ...shares, carry: 0.03, trip: 0.3 };
    for (const kind of LIMIT_KINDS) expect(eased[kind] / FIRST_PENALTIES[kind]).toBeCloseTo(wanted[kind] ?? 1, 9);
  });

  it("stay at the first as long as nothing may ease", () => {
    const weights = new LimitWeights(FIRST_PENALTIES);
    expect(weights.adapt(() => false, false)).toBe(false);
    expect(weights.adapt(() => true, false)).toBe(true);
    while (weights.adapt(() => false, false));
    expect(weights.penalties).toEqual(FIRST_PENALTIES);
  });

  it("rise where a limit stays broken, to thirty times the first, and only there", () => {
    const weights = new LimitWeights(FIRST_PENALTIES);
    adaptOften(weights, () => false);
    const raised = adaptOften(weights, (kind) => kind === "energy");
    expect(raised.energy).toBeCloseTo(30 * FIRST_PENALTIES.energy, 6);
    expect(raised.minute).toBeCloseTo(0.1 * FIRST_PENALTIES.minute, 9);
    expect(raised.batch).toBe(FIRST_PENALTIES.batch);
  });
});
