export { checkPlan } from "./checkPlan.ts";
export type { PlanFault, PlanFaultCode } from "./PlanFault.ts";
export type { PlanMoney } from "./PlanMoney.ts";
