export { type Assessment, assess, type KnownIntake, type KnownIntakes, type Verdict } from "./assess.ts";
export {
  ANNEX_XIV,
  availableCarbohydrateG,
  type DeclarationLine,
  type DeclaredCell,
  type DeclaredEnergy,
  declare,
  declaredEnergy,
  SALT_PER_SODIUM,
  saltG,
} from "./declaration.ts";
export {
  ACTIVITIES,
  type Activity,
  ADULT_FROM_YEARS,
  Eater,
  PHYTATE_LEVELS_MG,
  type ReferReason,
  reasonToRefer,
  SEXES,
  STAGES,
} from "./eater.ts";
export { type EnergyNeed, energyNeed, type KnownEnergyNeed, raiseToFloor } from "./energyNeed.ts";
export { type ReferenceIntake, type References, referencesFor } from "./referenceIntake.ts";
export {
  AUTHORITIES,
  ENERGY_KJ_PER_G,
  parseReferenceTables,
  type ReferenceComponent,
  type ReferenceTable,
  type ReferenceTables,
} from "./referenceTable.ts";
export { DECLARED_ITEMS, type DeclaredFigure, type DeclaredItem, roundDeclared } from "./roundDeclared.ts";
