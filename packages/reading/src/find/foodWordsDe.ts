import { foldWordsDe } from "./foldWordsDe.ts";
import type { FoodSynonym } from "./foodSynonyms.ts";

/** German words that no food is told apart by. */
export const IDLE_WORDS_DE: ReadonlySet<string> = new Set(
  foldWordsDe(`
    und oder der die das den dem ein eine einen von vom zum zur im in mit aus für nach type sorte güte qualität gute beste feine
    große kleine mittelgroße mittlere dicke dünne reife bio natur naturbelassen unbehandelte ganze halbe geschälte gehackte gewürfelte
    geschnittene geriebene gewaschene weiche kalte warme stück stücke packung beutel glas becher bund zehe zehen scheibe scheiben prise
    etwas mehr extra regional deutsche heimische lose abgepackt
  `),
);

const near = (food: string, list: string): FoodSynonym[] =>
  list.split(";").map((name) => ({ name: name.trim(), food, near: true }));

/** Names that mean one of several foods of the table: the usual one is offered, and never taken silently. Common usage, no source. */
export const SYNONYMS_DE: readonly FoodSynonym[] = [
  ...near("bread-white", "Brot"),
  ...near("beef-mince-standard", "Hackfleisch; Faschiertes; Gehacktes; gemischtes Hackfleisch"),
  ...near("beef-stewing", "Rindfleisch"),
  ...near("pork-shoulder", "Schweinefleisch"),
  ...near("lamb-stewing", "Lammfleisch"),
  ...near("turkey-breast", "Putenfleisch; Pute; Truthahn"),
  ...near("bacon-streaky", "Speck"),
  ...near("lettuce-iceberg", "Salat; Blattsalat"),
  ...near("pepper-red", "Paprikaschote; Paprikaschoten; Gemüsepaprika; Peperoni"),
  ...near("gouda", "Käse; geriebener Käse; Schnittkäse"),
  ...near("white-fish-frozen", "Fisch; Fischfilet"),
  ...near("black-beans-tinned", "Bohnen"),
  ...near("chili-red-fresh", "Chili; Chilischote"),
  ...near("walnuts", "Nüsse"),
];
