import type { WeekSource } from "halfloaf/sheet";

/** Names in a script that runs from right to left, and as long as a dish may well be. */
const EATERS = ["נועה בן־דוד", "ليلى الحدّاد", "Wolfeschlegelsteinhausen-Bergerdorff", "Ö", "محمد", "שרה"];
const LONG = "Slow red lentils with browned onions, lemon and dill, baked";
/** What was 2.49 is 2490.00 then. */
const TIMES = 1000;

/** The same week in a currency of large numbers, with long names and names from right to left; its sums still hold. */
export function hostileWeek(source: WeekSource): WeekSource {
  const { kitchen, names } = source;
  const eaters = new Map(kitchen.eaters.map(({ id }, at) => [id, EATERS[at % EATERS.length] as string]));
  return {
    ...source,
    week: { ...raise(source.week), kitchen: 'Küche <&> "המטבח" of the house at the end of the long lane' },
    names: {
      ...names,
      dish: (id) => `${LONG} ${id}`.slice(0, 60),
      eater: (id) => eaters.get(id) ?? id,
    },
  };
}

/** Every amount of money, times a thousand. */
function raise<Value>(value: Value, isMoney = false): Value {
  if (typeof value === "number") return (isMoney ? value * TIMES : value) as Value;
  if (Array.isArray(value)) return value.map((each) => raise(each, isMoney)) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, raise(each, /Minor$/.test(key))]),
  ) as Value;
}
