import * as v from "valibot";
import type { CalendarWords } from "../words/CalendarWords.ts";

/** Longer than any sentence of a calendar. */
const MOST_CHARS = 200;

const Template = v.pipe(v.string(), v.maxLength(MOST_CHARS));

/**
 * The words of a calendar as data, so that another machine can write it in the language of whoever asked for it: each is a text with
 * names in braces where the name itself is to stand, such as `Cook {dishes}`.
 */
export const CalendarTemplates = v.strictObject({
  name: Template,
  cook: Template,
  cookDish: Template,
  trip: Template,
  tripLine: Template,
  tripTill: Template,
  thaw: Template,
  soak: Template,
  ahead: Template,
  useUp: Template,
  useUpNote: Template,
});
export type CalendarTemplates = v.InferOutput<typeof CalendarTemplates>;

/** The templates that say what the words say. */
export function toCalendarTemplates(words: CalendarWords): CalendarTemplates {
  return {
    name: words.name("{kitchen}"),
    cook: words.cook("{dishes}"),
    cookDish: words.cookDish("{dish}", "{portions}", "{minutes}"),
    trip: words.trip("{shop}"),
    tripLine: words.tripLine("{count}", "{label}", "{price}"),
    tripTill: words.tripTill("{till}"),
    thaw: words.begin("thaw", "{what}", "{dish}"),
    soak: words.begin("soak", "{what}", "{dish}"),
    ahead: words.begin("ahead", "{what}", "{dish}"),
    useUp: words.useUp("{food}", "{mass}"),
    useUpNote: words.useUpNote,
  };
}

/** The words that the templates say; what stands in braces in a name itself stays as it is. */
export function fromCalendarTemplates(templates: CalendarTemplates): CalendarWords {
  const fill = (template: string, names: Readonly<Record<string, string>>): string =>
    template.replace(/\{([a-z]+)\}/g, (whole, name: string) =>
      Object.hasOwn(names, name) ? (names[name] ?? "") : whole,
    );
  return {
    name: (kitchen) => fill(templates.name, { kitchen }),
    cook: (dishes) => fill(templates.cook, { dishes }),
    cookDish: (dish, portions, minutes) => fill(templates.cookDish, { dish, portions, minutes }),
    trip: (shop) => fill(templates.trip, { shop }),
    tripLine: (count, label, price) => fill(templates.tripLine, { count, label, price }),
    tripTill: (till) => fill(templates.tripTill, { till }),
    begin: (kind, what, dish) => fill(templates[kind], { what, dish }),
    useUp: (food, mass) => fill(templates.useUp, { food, mass }),
    useUpNote: templates.useUpNote,
  };
}
