import { type Dish, scaleVolumes } from "../../dish/index.ts";
import type { WeekPlan } from "../../kitchen/index.ts";
import type { CivilDate } from "../../quantity/index.ts";
import { splitByLargestRemainder } from "../../quantity/index.ts";
import type { CardSource } from "../card/toCardSheet.ts";
import { toCardSheet } from "../card/toCardSheet.ts";
import { priceOfLot } from "../day/priceSources.ts";
import { cautionsOfDishes, wholeMinutes } from "../day/toDaySheet.ts";
import { tellFigures, toIngredient } from "../jsonLdSupply.ts";
import { labelOfLot } from "../lotFacts.ts";
import { splitBothWays } from "../splitBothWays.ts";
import type { WeekSource } from "../WeekSource.ts";
import type { LessonCooking, LessonPack, LessonPlate, LessonSheet } from "./LessonSheet.ts";

type Batch = WeekPlan["batches"][number];
type Facts = Omit<LessonPlate, "parts"> & { readonly portions: number };

/** Masses are split in tenths of a gram. */
const TENTHS = 10;

/** All that is eaten on one day of a week, each dish with the whole cooking it comes from; makings are told in the language (BCP 47). */
export function dayLesson(source: WeekSource, date: CivilDate, language = "en"): LessonSheet {
  const { week } = source;
  const batches = new Set(week.sittings.filter((sitting) => sitting.date === date).map(({ batch }) => batch));
  return {
    kitchen: week.kitchen,
    currency: week.currency,
    date,
    cookings: [...batches].map((at) => toCooking(source, at, language)),
  };
}

/** A dish as a kitchen would cook it by itself, at the prices of its card; likewise. */
export function dishLesson(source: CardSource, language = "en"): LessonSheet {
  const card = toCardSheet(source);
  const { kitchen, dish } = source;
  const priced = card.lines.flatMap((line) =>
    line.costMinor === undefined ? [] : [{ ...line, costMinor: line.costMinor }],
  );
  const packs = priced.map(
    ({ food, pack, purchasedG, costMinor }): LessonPack => ({
      label: pack?.label ?? food.name,
      price:
        pack === undefined
          ? { kind: "stock" }
          : pack.seenOn === undefined
            ? { kind: "estimate", at: pack.shop.name }
            : { kind: "seen", at: pack.shop.name, on: pack.seenOn },
      massG: purchasedG,
      costMinor,
    }),
  );
  const plates = card.platesMinor.map((costMinor): Facts => ({ costMinor, portions: 1 }));
  return {
    kitchen: kitchen.name,
    currency: kitchen.currency,
    cookings: [
      {
        ...methodOf(dish, source, card.portions, language),
        dish: card.dish,
        portions: card.portions,
        elapsedMinutes: card.minutes.elapsed,
        packs,
        plates: divide(packs, plates),
        costMinor: card.totalMinor,
        cautions: card.cautions,
      },
    ],
  };
}

function toCooking(source: WeekSource, at: number, language: string): LessonCooking {
  const { week, tables, names } = source;
  const batch = week.batches[at] as Batch;
  const dish = tables.dishes.find(({ id }) => id === batch.dish);
  const packs = batch.uses.map((use): LessonPack => {
    const lot = week.lots.find(({ id }) => id === use.lot);
    return {
      label: lot === undefined ? names.food(use.food) : labelOfLot(source, lot),
      price: priceOfLot(source, use.lot),
      ...(lot !== undefined && { pack: { massG: lot.massG, costMinor: lot.costMinor } }),
      massG: use.massG,
      costMinor: use.costMinor,
    };
  });
  return {
    dish: { id: batch.dish, name: names.dish(batch.dish) },
    portions: batch.portions,
    elapsedMinutes: wholeMinutes(batch.elapsedMinutes),
    ...(dish === undefined ? { makings: [], steps: [] } : methodOf(dish, source, batch.portions, language)),
    packs,
    plates: divide(packs, platesOf(source, at)),
    costMinor: batch.costMinor,
    cautions: cautionsOfDishes(source, new Set([batch.dish])),
  };
}

/** The plates of a batch, and what of it waits for later weeks as one more. */
function platesOf({ week, names }: WeekSource, at: number): Facts[] {
  const batch = week.batches[at] as Batch;
  const eaten = week.sittings
    .filter((sitting) => sitting.batch === at)
    .flatMap(({ eaters, plateMinor, date, kind, portions }) => {
      const each = portions / Math.max(1, eaters.length);
      const all = plateMinor.reduce((sum, minor) => sum + minor, 0);
      return eaters.map((id, place): Facts => {
        const costMinor = plateMinor[place] ?? 0;
        return {
          eater: { id, name: names.eater(id) },
          date,
          sitting: kind,
          costMinor,
          portions: all === 0 ? each : (portions * costMinor) / all,
        };
      });
    });
  const costMinor = batch.costMinor - eaten.reduce((sum, plate) => sum + plate.costMinor, 0);
  const portions = batch.portions - eaten.reduce((sum, plate) => sum + plate.portions, 0);
  return costMinor > 0 || portions > 1e-6 ? [...eaten, { costMinor, portions: Math.max(0, portions) }] : eaten;
}

/** What each plate took of each pack; grams go with the portions, costs so that plates and packs both add up. */
function divide(packs: readonly LessonPack[], plates: readonly Facts[]): LessonPlate[] {
  const tenths = packs.map(({ massG }) =>
    splitByLargestRemainder(
      Math.round(massG * TENTHS),
      plates.map(({ portions }) => portions),
    ),
  );
  const costs = splitBothWays(
    plates.map(({ costMinor }) => costMinor),
    packs.map(({ costMinor }) => costMinor),
  );
  return plates.map(({ portions: _, ...plate }, place) => ({
    ...plate,
    parts: packs.map((__, pack) => ({
      massG: (tenths[pack]?.[place] ?? 0) / TENTHS,
      costMinor: costs[place]?.[pack] ?? 0,
    })),
  }));
}

function methodOf(
  dish: Dish,
  { kitchen, tables }: Pick<WeekSource, "kitchen" | "tables">,
  portions: number,
  language: string,
): Pick<LessonCooking, "makings" | "steps"> {
  const times = portions / dish.portions;
  return {
    makings: dish.makings.map((making) =>
      toIngredient(making, tables.foods, { english: kitchen.english, language }, times),
    ),
    steps: dish.method.map(({ text, minutes, hands, ahead }) => ({
      text: scaleVolumes(text, times, (value) => tellFigures(String(value), { language })),
      minutes: wholeMinutes(minutes.fixed + minutes.perPortion * portions),
      isHandsFree: hands === "none",
      ahead,
    })),
  };
}
