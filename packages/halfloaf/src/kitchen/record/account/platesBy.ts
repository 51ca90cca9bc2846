import { SITTING_KINDS } from "../../../dish/index.ts";
import type { CivilDate } from "../../../quantity/index.ts";
import { addDays } from "../../../quantity/index.ts";
import type { SittingKind } from "../../datedSittings.ts";
import { menuOn } from "../menuOn.ts";
import { type DoneCooking, type EatenPlate, keyOfSitting, type RecordState, type SittingNews } from "../recordState.ts";

/** One sitting as it was planned and as it was. Money in minor units. */
export interface SittingAccount {
  readonly on: CivilDate;
  readonly sitting: SittingKind;
  /** Plates that were planned, one for each eater, in order of the accepted week. */
  readonly planned: readonly PlannedPlate[];
  readonly eaten: readonly EatenPlate[];
  /** Sums of the two; a sum of no plates is 0. */
  readonly plannedMinor: number;
  readonly eatenMinor: number;
  /** True where a plate's cost is the least it was. */
  readonly atLeast: boolean;
  readonly news?: SittingNews;
}

export interface PlannedPlate {
  readonly eater: string;
  readonly dish: string;
  readonly costMinor: number;
}

/** The sittings from one day to another at which something was planned, eaten or told, in order of time. */
export function platesBy(state: RecordState, from: CivilDate, to: CivilDate): SittingAccount[] {
  const eaten = new Map<string, EatenPlate[]>();
  for (const plate of state.plates) {
    if (plate.sitting === undefined || plate.on < from || plate.on > to) continue;
    const key = keyOfSitting(plate.on, plate.sitting);
    const plates = eaten.get(key);
    if (plates === undefined) eaten.set(key, [plate]);
    else plates.push(plate);
  }
  const accounts: SittingAccount[] = [];
  for (let day = from; day <= to; day = addDays(day, 1)) {
    for (const sitting of SITTING_KINDS) {
      const key = keyOfSitting(day, sitting);
      const account = toAccount(day, sitting, listPlanned(state, day, sitting), eaten.get(key) ?? []);
      const news = state.sittings.get(key);
      if (account.planned.length + account.eaten.length > 0 || news !== undefined)
        accounts.push(news === undefined ? account : { ...account, news });
    }
  }
  return accounts;
}

function listPlanned(state: RecordState, day: CivilDate, sitting: SittingKind): PlannedPlate[] {
  const sittings = menuOn(state, day)?.week.sittings.filter(({ date, kind }) => date === day && kind === sitting);
  return (sittings ?? []).flatMap(({ eaters, dish, plateMinor }) =>
    eaters.flatMap((eater, at) => {
      const costMinor = plateMinor[at];
      return costMinor === undefined ? [] : [{ eater, dish, costMinor }];
    }),
  );
}

function toAccount(
  on: CivilDate,
  sitting: SittingKind,
  planned: readonly PlannedPlate[],
  eaten: readonly EatenPlate[],
): SittingAccount {
  const sum = (plates: readonly { readonly costMinor: number }[]) =>
    plates.reduce((total, { costMinor }) => total + costMinor, 0);
  const atLeast = eaten.some((plate) => plate.atLeast);
  return { on, sitting, planned, eaten, plannedMinor: sum(planned), eatenMinor: sum(eaten), atLeast };
}

/** A cooking against its plan. A portion's cost need not be whole. */
export interface CookingAccount {
  readonly cooking: DoneCooking;
  readonly portionMinor: number;
  /** Absent where the accepted week had no such batch. */
  readonly planned?: { readonly portions: number; readonly costMinor: number; readonly portionMinor: number };
}

/** The cookings from one day to another: what a portion cost as it was and as it was planned. */
export function cookingsBy(state: RecordState, from: CivilDate, to: CivilDate): CookingAccount[] {
  const done = [...state.cookings.values()].filter(({ on }) => from <= on && on <= to);
  return done.map((cooking) => {
    const account = { cooking, portionMinor: cooking.costMinor / cooking.portions };
    const batches = menuOn(state, cooking.on)?.week.batches ?? [];
    const batch =
      batches.find(
        ({ dish, date, kind }) => dish === cooking.dish && date === cooking.on && kind === cooking.sitting,
      ) ?? batches.find(({ dish, date }) => dish === cooking.dish && date === cooking.on);
    if (batch === undefined || !(batch.portions > 0)) return account;
    const { portions, costMinor } = batch;
    return { ...account, planned: { portions, costMinor, portionMinor: costMinor / portions } };
  });
}
