import { CAUTION_WORDS } from "@halfloaf/words/en/cautions";
import { accountsEn } from "./accountsEn.ts";
import { buyingEn } from "./buyingEn.ts";
import { commonEn } from "./commonEn.ts";
import { dishesEn } from "./dishesEn.ts";
import { firstEn } from "./firstEn.ts";
import { foodsEn } from "./foodsEn.ts";
import { impossibleEn } from "./impossibleEn.ts";
import { kitchenEn } from "./kitchenEn.ts";
import { mappingEn } from "./mappingEn.ts";
import { mendedEn } from "./mendedEn.ts";
import { menuEn } from "./menuEn.ts";
import { paceEn } from "./paceEn.ts";
import { pricesEn } from "./pricesEn.ts";
import { readPricesEn } from "./readPricesEn.ts";
import { sharingEn } from "./sharingEn.ts";
import { sheetsEn } from "./sheetsEn.ts";
import { storesEn } from "./storesEn.ts";
import { todayEn } from "./todayEn.ts";
import { wishesEn } from "./wishesEn.ts";
import { workEn } from "./workEn.ts";

/** All further texts in English at once, for who needs no screen to wait: tests, and the types of other languages. */
export const furtherEn = {
  ...commonEn,
  ...accountsEn,
  ...buyingEn,
  ...CAUTION_WORDS,
  ...dishesEn,
  ...firstEn,
  ...foodsEn,
  ...impossibleEn,
  ...kitchenEn,
  ...mappingEn,
  ...mendedEn,
  ...menuEn,
  ...paceEn,
  ...pricesEn,
  ...readPricesEn,
  ...sheetsEn,
  ...storesEn,
  ...todayEn,
  ...wishesEn,
  ...workEn,
  sharing: sharingEn,
};
