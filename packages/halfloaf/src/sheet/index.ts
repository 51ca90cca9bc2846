export { unitWordOfCommonCode } from "./commonCodes.ts";
export { dishToJsonLd, type JsonLdOptions, toJsonLdText } from "./dishToJsonLd.ts";
export { type JsonLd, type JsonLdValue, OWN_PREFIX } from "./ownProperty.ts";
export { FOOD_KINDS, type FoodKind, foodKindOf } from "./ribbons/foodKindOf.ts";
export {
  type Bead,
  layRibbons,
  RIBBON_SIZES,
  type Ribbon,
  type RibbonPicture,
  type RibbonSizes,
  type Station,
  type Stretch,
} from "./ribbons/layRibbons.ts";
export { letterOf, listTicks, type TimelineWords, timelineSvg } from "./timelineSvg.ts";
