export { type AllergenName, EU_ALLERGEN_NAMES, US_ALLERGEN_NAMES } from "./allergens.ts";
export { type AuthorityChoice, JURISDICTIONS, type Jurisdiction } from "./authority.ts";
export {
  CAUTION_CODES,
  type Caution,
  type CautionCode,
  type CautionFood,
  cautionsOf,
  isRice,
  type SafetyTables,
} from "./cautionsOf.ts";
export {
  CORE_KINDS,
  type CoreKind,
  type CoreRule,
  type CoreTemperatures,
  coreKindOf,
  coreRule,
  parseCoreTemperatures,
} from "./coreTemperature.ts";
export { type CoolingBound, type CoolingPoints, type CoolingVerdict, judgeCooling } from "./judgeCooling.ts";
export {
  judgeRoomTime,
  type KeepingRule,
  type KeepingRuleName,
  type KeepingRules,
  type LeftoverDays,
  leftoverDays,
  parseKeepingRules,
  pickRule,
  type RoomTime,
} from "./keeping.ts";
export { equivalentMinutes, type LethalReference } from "./lethality.ts";
