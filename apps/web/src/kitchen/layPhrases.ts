/** What is said in another language of what a new kitchen begins with, by what is said in English. */
export type Phrases = Readonly<Record<string, string>>;

interface Labelled {
  readonly label: string;
}

/** What of a demo kitchen has words in it. */
interface Worded {
  readonly name: string;
  readonly note?: string;
  readonly eaters: readonly { readonly name: string }[];
  readonly packs: readonly Labelled[];
}

/** What a new kitchen begins with, as far as it is told here. */
interface Beginnings {
  readonly kitchens: readonly { readonly name: string; readonly content: unknown }[];
  readonly shops: { readonly packs: readonly Labelled[] };
}

/**
 * What a new kitchen begins with in another language: names and notes of the demo kitchens, labels of packs. From then on these are
 * the kitchen's own, so that they stay as they are. Names of shops and brands are invented and the same in every language.
 */
export function layPhrases<Begun extends Beginnings>(begun: Begun, phrases: Phrases): Begun {
  const tell = (text: string): string => phrases[text] ?? text;
  const tellPacks = <Pack extends Labelled>(packs: readonly Pack[]): Pack[] =>
    packs.map((pack) => ({ ...pack, label: tellLabel(pack.label, phrases) }));
  const tellKitchen = (kitchen: Worded): Worded => ({
    ...kitchen,
    name: tell(kitchen.name),
    ...(kitchen.note !== undefined && { note: tell(kitchen.note) }),
    eaters: kitchen.eaters.map((eater) => ({ ...eater, name: tell(eater.name) })),
    packs: tellPacks(kitchen.packs),
  });
  const { kitchens, shops } = begun;
  return {
    ...begun,
    kitchens: kitchens.map(({ name, content }) => ({ name, content: tellKitchen(content as Worded) })),
    shops: { ...shops, packs: tellPacks(shops.packs) },
  };
}

/** A label is what it is, how it comes and how much there is, with commas between: "Eggs, barn, tray of 30". */
function tellLabel(label: string, phrases: Phrases): string {
  const tell = (text: string): string => phrases[text] ?? text;
  return label
    .split(", ")
    .map((part) => {
      const [, lead, figure, unit] = /^(?:(\D+) )?(\d+(?:\.\d+)?)(?: (.+))?$/.exec(part) ?? [];
      if (figure === undefined) return tell(part);
      return [lead && tell(lead), figure.replace(".", ","), unit && tell(unit)].filter(Boolean).join(" ");
    })
    .join(", ");
}
