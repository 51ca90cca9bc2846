import type { CautionWords } from "halfloaf/sheet";
import type { Language } from "../languages.ts";
import type { accountsEn } from "./accountsEn.ts";
import type { buyingEn } from "./buyingEn.ts";
import type { commonEn } from "./commonEn.ts";
import type { dishesEn } from "./dishesEn.ts";
import type { firstEn } from "./firstEn.ts";
import type { foodsEn } from "./foodsEn.ts";
import type { impossibleEn } from "./impossibleEn.ts";
import type { kitchenEn } from "./kitchenEn.ts";
import type { mappingEn } from "./mappingEn.ts";
import type { mendedEn } from "./mendedEn.ts";
import type { menuEn } from "./menuEn.ts";
import type { paceEn } from "./paceEn.ts";
import type { pricesEn } from "./pricesEn.ts";
import type { readPricesEn } from "./readPricesEn.ts";
import type { sharingEn } from "./sharingEn.ts";
import type { sheetsEn } from "./sheetsEn.ts";
import type { storesEn } from "./storesEn.ts";
import type { todayEn } from "./todayEn.ts";
import type { wishesEn } from "./wishesEn.ts";
import type { workEn } from "./workEn.ts";

/** The parts that further texts are loaded by: those that most screens say, and those of one screen or one concern. */
interface FurtherParts {
  readonly common: typeof commonEn;
  readonly accounts: typeof accountsEn;
  readonly buying: typeof buyingEn;
  readonly cautions: CautionWords;
  readonly dishes: typeof dishesEn;
  readonly first: typeof firstEn;
  readonly foods: typeof foodsEn;
  readonly impossible: typeof impossibleEn;
  readonly kitchen: typeof kitchenEn;
  readonly mapping: typeof mappingEn;
  readonly mended: typeof mendedEn;
  readonly menu: typeof menuEn;
  readonly pace: typeof paceEn;
  readonly prices: typeof pricesEn;
  readonly readPrices: typeof readPricesEn;
  readonly sharing: { readonly sharing: typeof sharingEn };
  readonly sheets: typeof sheetsEn;
  readonly stores: typeof storesEn;
  readonly today: typeof todayEn;
  readonly wishes: typeof wishesEn;
  readonly work: typeof workEn;
}

export type FurtherPart = keyof FurtherParts;

/** The common texts and those of the parts named; without a name all of them. */
export type Further<Part extends FurtherPart = FurtherPart> = All<FurtherParts["common" | Part]>;

/** What is each of the members of a union at once. */
type All<Union> = (Union extends unknown ? (each: Union) => void : never) extends (all: infer Each) => void
  ? Each
  : never;

type Loader<Part extends FurtherPart> = Readonly<Record<Language, () => Promise<FurtherParts[Part]>>>;

/** What loads each part in each language. */
export const FURTHER_LOADERS: { readonly [Part in FurtherPart]: Loader<Part> } = {
  common: {
    en: () => import("./commonEn.ts").then((loaded) => loaded.commonEn),
    de: () => import("./commonDe.ts").then((loaded) => loaded.commonDe),
  },
  accounts: {
    en: () => import("./accountsEn.ts").then((loaded) => loaded.accountsEn),
    de: () => import("./accountsDe.ts").then((loaded) => loaded.accountsDe),
  },
  buying: {
    en: () => import("./buyingEn.ts").then((loaded) => loaded.buyingEn),
    de: () => import("./buyingDe.ts").then((loaded) => loaded.buyingDe),
  },
  cautions: {
    en: () => import("@halfloaf/words/en/cautions").then((loaded) => loaded.CAUTION_WORDS),
    de: () => import("@halfloaf/words/de/cautions").then((loaded) => loaded.CAUTION_WORDS_DE),
  },
  dishes: {
    en: () => import("./dishesEn.ts").then((loaded) => loaded.dishesEn),
    de: () => import("./dishesDe.ts").then((loaded) => loaded.dishesDe),
  },
  first: {
    en: () => import("./firstEn.ts").then((loaded) => loaded.firstEn),
    de: () => import("./firstDe.ts").then((loaded) => loaded.firstDe),
  },
  foods: {
    en: () => import("./foodsEn.ts").then((loaded) => loaded.foodsEn),
    de: () => import("./foodsDe.ts").then((loaded) => loaded.foodsDe),
  },
  impossible: {
    en: () => import("./impossibleEn.ts").then((loaded) => loaded.impossibleEn),
    de: () => import("./impossibleDe.ts").then((loaded) => loaded.impossibleDe),
  },
  kitchen: {
    en: () => import("./kitchenEn.ts").then((loaded) => loaded.kitchenEn),
    de: () => import("./kitchenDe.ts").then((loaded) => loaded.kitchenDe),
  },
  mapping: {
    en: () => import("./mappingEn.ts").then((loaded) => loaded.mappingEn),
    de: () => import("./mappingDe.ts").then((loaded) => loaded.mappingDe),
  },
  mended: {
    en: () => import("./mendedEn.ts").then((loaded) => loaded.mendedEn),
    de: () => import("./mendedDe.ts").then((loaded) => loaded.mendedDe),
  },
  menu: {
    en: () => import("./menuEn.ts").then((loaded) => loaded.menuEn),
    de: () => import("./menuDe.ts").then((loaded) => loaded.menuDe),
  },
  pace: {
    en: () => import("./paceEn.ts").then((loaded) => loaded.paceEn),
    de: () => import("./paceDe.ts").then((loaded) => loaded.paceDe),
  },
  prices: {
    en: () => import("./pricesEn.ts").then((loaded) => loaded.pricesEn),
    de: () => import("./pricesDe.ts").then((loaded) => loaded.pricesDe),
  },
  readPrices: {
    en: () => import("./readPricesEn.ts").then((loaded) => loaded.readPricesEn),
    de: () => import("./readPricesDe.ts").then((loaded) => loaded.readPricesDe),
  },
  sharing: {
    en: () => import("./sharingEn.ts").then((loaded) => ({ sharing: loaded.sharingEn })),
    de: () => import("./sharingDe.ts").then((loaded) => ({ sharing: loaded.sharingDe })),
  },
  sheets: {
    en: () => import("./sheetsEn.ts").then((loaded) => loaded.sheetsEn),
    de: () => import("./sheetsDe.ts").then((loaded) => loaded.sheetsDe),
  },
  stores: {
    en: () => import("./storesEn.ts").then((loaded) => loaded.storesEn),
    de: () => import("./storesDe.ts").then((loaded) => loaded.storesDe),
  },
  today: {
    en: () => import("./todayEn.ts").then((loaded) => loaded.todayEn),
    de: () => import("./todayDe.ts").then((loaded) => loaded.todayDe),
  },
  wishes: {
    en: () => import("./wishesEn.ts").then((loaded) => loaded.wishesEn),
    de: () => import("./wishesDe.ts").then((loaded) => loaded.wishesDe),
  },
  work: {
    en: () => import("./workEn.ts").then((loaded) => loaded.workEn),
    de: () => import("./workDe.ts").then((loaded) => loaded.workDe),
  },
};
