import { OWN_PREFIX } from "halfloaf/sheet";
import { type Item, type ItemValue, valuesOf } from "./Item.ts";
import { toPlainText } from "./plainText.ts";

/** A detail that this program wrote: its value and the item that it stands in. */
interface Detail {
  readonly value: string;
  readonly item: Item;
}

type Details = ReadonlyMap<string, readonly Detail[]>;

/**
 * The dish that `dishToJsonLd` wrote, put together again but not checked; undefined for any item that does not carry its
 * details. Whoever wrote the page: the shape, the foods and the order of steps are checked by whoever takes it.
 */
export function readWrittenDish(item: Item): unknown {
  const details = detailsOf(item);
  const one = (name: string) => details.get(name)?.[0]?.value;
  if (one("id") === undefined || one("portions") === undefined) return undefined;
  return withoutAbsent({
    id: one("id"),
    title: textOf(item, "name"),
    cooking: textOf(item, "recipeCuisine"),
    manner: one("manner"),
    fits: all(details, "fits"),
    main: one("main"),
    portions: toNumber(one("portions")),
    portionMassG: toNumber(one("portion-mass-g")),
    statedMinutes: toNumber(one("stated-minutes")),
    makings: itemsOf(item, "supply").map(toMaking),
    method: itemsOf(item, "recipeInstructions").map(toStep),
    keeps: withoutAbsent({
      fridgeDays: toNumber(one("fridge-days")),
      freezerDays: toNumber(one("freezer-days")),
      authority: one("keeps-authority"),
    }),
    travels: one("travels") === "true",
    served: all(details, "served"),
    cautions: all(details, "caution"),
    note: textOf(item, "description"),
  });
}

function toMaking(supply: Item): unknown {
  const details = detailsOf(supply);
  const one = (name: string) => details.get(name)?.[0]?.value;
  return withoutAbsent({
    food: one("food"),
    amount: toAmount(itemsOf(supply, "requiredQuantity")[0]),
    as: one("as"),
    cut: one("cut"),
    retention: one("retention"),
    optional: one("optional") === "true",
    alternatives: (details.get("alternative") ?? []).map(({ value, item }) =>
      withoutAbsent({
        food: value,
        amount: toAmount(itemsOf(item, "valueReference")[0]),
        as: detailsOf(item).get("as")?.[0]?.value,
      }),
    ),
  });
}

function toAmount(quantity: Item | undefined): unknown {
  if (quantity === undefined) return "to-taste";
  const number = (name: string) => toNumber(textOf(quantity, name));
  return withoutAbsent({
    value: number("value"),
    from: number("minValue"),
    to: number("maxValue"),
    unit: textOf(quantity, "unitText"),
    size: detailsOf(quantity).get("size")?.[0]?.value,
  });
}

function toStep(step: Item): unknown {
  const details = detailsOf(step);
  const one = (name: string) => details.get(name)?.[0]?.value;
  return withoutAbsent({
    id: one("id"),
    text: textOf(step, "text"),
    kind: one("kind"),
    minutes: withoutAbsent({ fixed: toNumber(one("fixed-minutes")), perPortion: toNumber(one("minutes-per-portion")) }),
    hands: one("hands"),
    kit: all(details, "kit"),
    tempC: toNumber(one("temp-c")),
    after: all(details, "after"),
    holdMinutes: toNumber(one("hold-minutes")),
    ahead: one("ahead") === "true",
    foods: all(details, "food"),
  });
}

function detailsOf(item: Item): Details {
  const details = new Map<string, Detail[]>();
  for (const each of itemsOf(item, "additionalProperty")) {
    const id = textOf(each, "propertyID");
    const value = textOf(each, "value");
    if (id === undefined || value === undefined || !id.startsWith(OWN_PREFIX)) continue;
    const name = id.slice(OWN_PREFIX.length);
    const list = details.get(name);
    if (list === undefined) details.set(name, [{ value, item: each }]);
    else list.push({ value, item: each });
  }
  return details;
}

function all(details: Details, name: string): string[] {
  return (details.get(name) ?? []).map(({ value }) => value);
}

function itemsOf(item: Item, name: string): Item[] {
  return valuesOf(item, name).filter((value: ItemValue) => typeof value === "object");
}

function textOf(item: Item, name: string): string | undefined {
  const [value] = valuesOf(item, name);
  return typeof value === "string" ? toPlainText(value) : undefined;
}

function toNumber(text: string | undefined): number | undefined {
  return text === undefined ? undefined : Number(text);
}

function withoutAbsent(object: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined));
}
