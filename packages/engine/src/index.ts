export { type LinearLimits, solveLinear } from "./solveLinear.ts";
