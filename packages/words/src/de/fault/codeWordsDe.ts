import type { CodeWords } from "../../fault/FaultWords.ts";
import { quote } from "../../fault/valueWords.ts";
import { harmless } from "../../harmless.ts";

const needs =
  (none: string, what: string): CodeWords =>
  (_issue, value) => ({ says: `ist ${value}, ${none}`, remedy: `Schreib ${what}.` });

const limit =
  (word: string): CodeWords =>
  ({ expected }, value) => {
    const bound = expected.replace(/^[<>=]+/, "");
    return { says: `ist ${value}, was nicht ${word} ${bound} ist`, remedy: `Schreib eine Zahl ${word} ${bound}.` };
  };

/** What the rules of the schema ask for, by how they say it. */
const ASKED: Readonly<Record<string, string>> = {
  "lower-case words joined by hyphens": "kleine Wörter mit Bindestrichen",
  "a day of the calendar, YYYY-MM-DD": "ein Tag des Kalenders, JJJJ-MM-TT",
  "four digits": "vier Ziffern",
  "each weekday once": "jeder Wochentag einmal",
  "no more than most": "nicht mehr als most",
  "least, most or both": "least, most oder beides",
  "mostPerWeek, daysApart or both": "mostPerWeek, daysApart oder beides",
  "at least one of dish, manner, main, group, hygiene, diet":
    "mindestens eins von dish, manner, main, group, hygiene, diet",
  "no day before it was bought": "kein Tag vor dem Kauf",
  "nothing for separate pieces, which are never opened": "nichts bei einzelnen Stücken, die nie geöffnet werden",
  "0 where the cost is not known": "0, wo die Kosten nicht bekannt sind",
  "no more than the packs cost one by one": "nicht mehr, als die Packungen einzeln kosten",
  "either where and when the price was seen, or that it is an estimate":
    "entweder wo und wann der Preis gesehen wurde, oder dass er geschätzt ist",
  "a source for every figure and for nothing else": "eine Quelle für jede Zahl und für sonst nichts",
  "no component that has a figure as well": "kein Bestandteil, der auch eine Zahl hat",
  "a GTIN of 8, 12, 13 or 14 digits with its check digit": "eine GTIN mit 8, 12, 13 oder 14 Ziffern samt Prüfziffer",
};

/** A rule that says itself what it asks for. */
const needsMessage: CodeWords = ({ message, expected }, value) => {
  const asked = message ?? expected;
  return { says: `ist ${value}`, remedy: `Verlangt ist: ${ASKED[asked] ?? harmless(asked)}.` };
};

const unknownName =
  (what: string, remedy: string): CodeWords =>
  ({ received }) => ({ says: `nennt ${quote(received)}, und ${what} dieses Namens gibt es nicht`, remedy });

/** Words by the code of an issue, in German: those of the schema first, then those of what must fit together in a kitchen. */
export const CODE_WORDS_DE: Readonly<Record<string, CodeWords>> = {
  string: needs("kein Text in Anführungszeichen", "einen Text in Anführungszeichen"),
  number: needs("keine Zahl", "eine Zahl"),
  boolean: needs("weder true noch false", "true oder false"),
  array: needs("keine Liste in eckigen Klammern", "eine Liste in eckigen Klammern"),
  record: needs("kein Objekt in geschweiften Klammern", "ein Objekt in geschweiften Klammern"),
  integer: needs("keine ganze Zahl", "eine ganze Zahl"),
  safe_integer: needs("keine ganze Zahl", "eine ganze Zahl"),
  non_empty: (_issue, value) => ({ says: `ist ${value}, also leer`, remedy: "Füll es aus." }),
  min_value: limit("mindestens"),
  max_value: limit("höchstens"),
  gt_value: limit("über"),
  lt_value: limit("unter"),
  min_length: ({ expected, received }) => ({
    says: `hat ${received} Einträge und braucht mindestens ${expected.replace(/^>=/, "")}`,
    remedy: "Füg hinzu, was fehlt.",
  }),
  length: ({ expected, received }) => ({
    says: `hat ${received} Einträge statt ${expected}`,
    remedy: `Gib ihm ${expected} Einträge.`,
  }),
  picklist: ({ expected }, value) => {
    const choices = expected.match(/"[^"]*"/g) ?? [];
    const list =
      choices.length > 30 ? `${choices.slice(0, 8).join(", ")} und ${choices.length - 8} weiteren` : choices.join(", ");
    return { says: `ist ${value}, was keiner der möglichen Werte ist`, remedy: `Schreib einen von ${list}.` };
  },
  literal: ({ expected }, value) => ({ says: `ist ${value}`, remedy: `Schreib ${expected}.` }),
  regex: needsMessage,
  check: needsMessage,
  partial_check: needsMessage,
  "name-twice": ({ received }) => ({
    says: `ist ${quote(received)}, was schon vorher dasteht`,
    remedy: "Gib jedem einen eigenen Namen.",
  }),
  "food-unknown": unknownName("ein Lebensmittel", "Schreib den Namen (id) eines Lebensmittels der Tabelle."),
  "shop-unknown": unknownName(
    "ein Laden",
    'Schreib den Namen (id) eines Ladens aus "shops", oder füg den Laden hinzu.',
  ),
  "eater-unknown": unknownName(
    "eine Person",
    'Schreib den Namen (id) einer Person aus "eaters", oder füg die Person hinzu.',
  ),
  "lot-unknown": unknownName("ein Posten", 'Schreib den Namen (id) eines Postens aus "stores" oder "putBy".'),
  "dish-unknown": unknownName(
    "ein Gericht",
    'Schreib den Namen (id) eines mitgelieferten Gerichts oder eines aus "dishes".',
  ),
  "sitting-kind-unknown": ({ received, expected }) => ({
    says: `ist ${quote(received)}, was keine Art von Mahlzeit ist`,
    remedy: `Schreib eine von ${expected}.`,
  }),
  "eater-twice": ({ received }) => ({
    says: `setzt ${quote(received)} an zwei Mahlzeiten zugleich`,
    remedy: "Nimm die Person aus einer der beiden heraus.",
  }),
  "energy-share-missing": () => ({
    says: "fehlt, obwohl es solche Mahlzeiten gibt",
    remedy: "Gib ihren Anteil an der Energie des Tages in Prozent.",
  }),
  "wish-no-sitting": () => ({
    says: "spricht von keiner Mahlzeit dieser Küche",
    remedy: 'Vergleich "on", "at" und "eaters" des Wunsches mit "sittings".',
  }),
  "wish-beyond": ({ received, expected }) => ({
    says: `ist ${received}, mehr als die ${/\d+/.exec(expected)?.[0] ?? ""} Mahlzeiten einer Woche, um die es geht`,
    remedy: "Wünsch dir weniger, oder mehr Tage.",
  }),
  "wish-unmet": () => ({
    says: "meint kein Gericht, das es zu diesen Mahlzeiten geben kann",
    remedy: "Mein andere Gerichte, oder füg Packungen, Gerät oder Mahlzeiten hinzu, mit denen eins zu kochen ist.",
  }),
  "not-kept-there": (_issue, value) => ({
    says: `ist ${value}, wo das Gericht nicht hält oder wofür das Gerät keinen Platz hat`,
    remedy: "Schreib den anderen Ort, oder den Platz, den das Gerät hat.",
  }),
  "density-unknown": (_issue, value) => ({
    says: `ist ${value}, ein Volumen eines Lebensmittels, dessen Dichte nicht bekannt ist`,
    remedy: "Gib stattdessen die Masse in g.",
  }),
  "pieces-unknown": (_issue, value) => ({
    says: `ist ${value}, in Stücken eines Lebensmittels, dessen Stückgewicht nicht bekannt ist`,
    remedy: "Gib stattdessen die Masse in g.",
  }),
  "size-unknown": ({ expected }, value) => ({
    says: `ist ${value}, eine Größe, in der dieses Lebensmittel nicht bekannt ist`,
    remedy: `Nimm ${expected}.`,
  }),
  "main-unknown": ({ received }) => ({
    says: `ist ${quote(received)}, was keine Zutat des Gerichts ist`,
    remedy: "Schreib das Lebensmittel einer seiner Zutaten.",
  }),
  "step-twice": ({ received }) => ({
    says: `ist ${quote(received)}, wie bei einem anderen Schritt`,
    remedy: "Gib jedem Schritt einen eigenen Namen.",
  }),
  "step-unknown": unknownName("ein Schritt", "Schreib den Namen (id) eines Schritts der Zubereitung."),
  "food-unlisted": unknownName("eine Zutat", "Füg sie den Zutaten hinzu, oder nimm sie aus dem Schritt."),
  "step-cyclic": ({ received }) => ({
    says: `lässt den Schritt ${quote(received)} auf sich selbst warten`,
    remedy: 'Nimm einen der Schritte aus "after".',
  }),
  "version-newer": ({ received }) => ({
    says: `ist ${received}: ein neueres Halfloaf hat das geschrieben`,
    remedy: "Hol dir ein neueres Halfloaf; die Zahl zu ändern hilft nicht.",
  }),
};
