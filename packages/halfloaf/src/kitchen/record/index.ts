export { lotsOfLine } from "../lotsOfLine.ts";
export {
  type AccountLine,
  accountsBy,
  type RealSums,
} from "./account/accountsBy.ts";
export { type BudgetOfWeek, budgetOf } from "./account/budgetOf.ts";
export { nameStretch, type Stretch, startOf, startOfNext } from "./account/calendar.ts";
export { type CookingEnergy, cookingEnergy, KIT_POWER, type KitPower } from "./account/cookingEnergy.ts";
export { type EnergyDrawn, energyBetween } from "./account/energyBetween.ts";
export { type PlannedSums, plannedOn } from "./account/plannedOn.ts";
export {
  type CookingAccount,
  cookingsBy,
  type PlannedPlate,
  platesBy,
  type SittingAccount,
} from "./account/platesBy.ts";
export { type PriceHistory, type PricePoint, type PriceQuestion, priceHistory } from "./account/priceHistory.ts";
export { type FoodLoss, type LotLoss, type Saving, wasteBy } from "./account/wasteBy.ts";
export { type ReasonLoss, wasteByReason } from "./account/wasteByReason.ts";
export { beginAhead, type JobAhead } from "./act/beginAhead.ts";
export { type CookingWritten, type CookWish, cook, listTakenMakings } from "./act/cook.ts";
export { type EatingWritten, type EatWish, eat, type PlateWish } from "./act/eat.ts";
export { type Count, type CountDifference, type StocktakeWritten, stocktake } from "./act/stocktake.ts";
export { throwAway } from "./act/throwAway.ts";
export { type ShoppingDone, type TickedPacks, tickPacks } from "./act/tickPacks.ts";
export { toCookWish } from "./act/toCookWish.ts";
export { type ChangedSince, changedSince } from "./changedSince.ts";
export { compareEvents, compareWritten } from "./compareEvents.ts";
export { EditLog, type KitchenAsEdited, type PassedOver } from "./EditLog.ts";
export { Edit, editsBetween, fromThings, parseEdit, type Thing, toThings } from "./edit.ts";
export {
  type EventKind,
  type EventOf,
  type Plate,
  parseEvent,
  parseEvents,
  type ReadEvents,
  RecordEvent,
} from "./event.ts";
export { deviceOf, EventId, numberOf, toEventId } from "./eventId.ts";
export { fingerprintOf } from "./fingerprintOf.ts";
export { type FollowedWeek, followWeek } from "./followWeek.ts";
export { kitchenOfMenu, kitchensOfMenus, type RecordRows } from "./kitchenOfMenu.ts";
export { EditedKitchen, KitchenRecord, RECORD_VERSION } from "./kitchenRecord.ts";
export { menuOn, menuToCome } from "./menuOn.ts";
export { type EditBody, type EventBody, Pen, penOf, type Writer } from "./Pen.ts";
export { forgetPace, type PaceOfCook, paceOfKitchen, pacesOf } from "./pacesOf.ts";
export { FILE_DEVICE, fromKitchen, parseRecord } from "./parseRecord.ts";
export { type PortionsAtHand, portionsAtHand } from "./portionsAtHand.ts";
export { RecordLedger } from "./RecordLedger.ts";
export {
  type AcceptedMenu,
  type BegunAhead,
  type DoneCooking,
  type EatenPlate,
  type EventFault,
  keyOfBegun,
  keyOfMissing,
  keyOfPlanned,
  keyOfSitting,
  type LotToCount,
  type MadeTrip,
  type MissingPack,
  type RecordState,
  type SeenPrice,
  type SittingNews,
} from "./recordState.ts";
export { type Reminder, remindersOf, type UntoldJob, untoldJobs } from "./remindersOf.ts";
export { type AccountRow, listAccounts } from "./rows/listAccounts.ts";
export { listMovements, type MovementRow } from "./rows/listMovements.ts";
export { listPrices, type PriceRow } from "./rows/listPrices.ts";
export { listStores, type StoresRow } from "./rows/listStores.ts";
export { settleTwins, toCanonicalText } from "./settleTwins.ts";
export { compareStamps, nextStamp, type Stamp } from "./stamp.ts";
export { toKitchen } from "./toKitchen.ts";
export { type UseUpLine, useUpList } from "./useUpList.ts";
export { weekChanges } from "./weekChanges.ts";
export { type LotInDanger, lotsInDanger, type WeekNews, weekNews } from "./weekNews.ts";
