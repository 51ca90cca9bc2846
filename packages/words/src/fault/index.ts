export type { FaultWords } from "./FaultWords.ts";
export { type KnownNames, type ToldIssue, tellIssue } from "./tellIssue.ts";
export { quote, showValue, tellPath, valueAt } from "./valueWords.ts";
