/**
 * Bounds as single integers.
 *
 * A variable v has two bounds: 2v, "v is at least ...", and 2v + 1, "-v is at least ...", so that an upper bound is a
 * lower bound of the mirror image and every rule is written once. The literal [y_b >= t] of bound b is packed as
 *
 *     lit = b * 2^16 + (t + 32767)
 *
 * Literals of one bound are ordered as their values, so with `bounds[b]` the strongest literal known of b,
 * a literal is true iff `bounds[lit >>> 16] >= lit`. Not [v >= t] is [-v >= 1 - t], and since
 * (1 - t) + 32767 = 65535 - (t + 32767), negation flips the seventeen lowest bits.
 *
 * The packing holds values within -16000..16000 with lags within -16000..16000, and up to 8,000 variables, so that
 * every literal stays a small integer on all engines.
 */
export type Literal = number;

export const FLIP = 0x1ffff;
export const ZERO = 32767;
export const VALUE = 0xffff;
export const MOST_VALUE = 16000;
export const MOST_VARIABLES = 8000;

/** Variable 0 is fixed at 0, which makes these two literals constant. */
export const TRUE: Literal = atLeast(0, 0);
export const FALSE: Literal = negate(TRUE);

/** [variable >= value]. */
export function atLeast(variable: number, value: number): Literal {
  return (variable << 17) + value + ZERO;
}

/** [variable <= value]. */
export function atMost(variable: number, value: number): Literal {
  return (variable << 17) + 0x10000 + ZERO - value;
}

/** The literal that holds where this one does not. */
export function negate(literal: Literal): Literal {
  return literal ^ FLIP;
}
