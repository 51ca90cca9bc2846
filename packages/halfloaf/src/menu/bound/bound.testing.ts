/** Problems and exhaustive answers for the tests of solvers, which live in another package. */
export { arbitraryWeek } from "../check/randomWeek.testing.ts";
export { tryEveryPlan } from "./tryEveryPlan.testing.ts";
