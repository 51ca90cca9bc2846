export { checkWork } from "./checkWork.ts";
export { findExcesses, measureWork } from "./measureWork.ts";
export type { WorkFault, WorkFaultCode } from "./WorkFault.ts";
