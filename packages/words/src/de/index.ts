export { EU_ALLERGEN_NAMES_DE, US_ALLERGEN_NAMES_DE } from "./allergenWordsDe.ts";
export { ROW_NAMES_DE, SITTING_NAMES_DE } from "./nameWordsDe.ts";
