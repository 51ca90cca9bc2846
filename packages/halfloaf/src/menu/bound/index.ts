export type { ViolatedCut } from "./LevelCuts.ts";
export { buildWeeklyModel, type WeeklyModel } from "./weeklyModel.ts";
