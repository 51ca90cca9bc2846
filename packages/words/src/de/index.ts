export { ROW_NAMES_DE, SITTING_NAMES_DE } from "./nameWordsDe.ts";
