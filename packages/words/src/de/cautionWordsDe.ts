import type { CautionWords } from "halfloaf/sheet";
import { toCounted } from "../toCounted.ts";

const counted = toCounted("de");

/**
 * What tells cautions in German. Those with figures take them from the text of the library, as a kept week has nothing but
 * code and text; a text of an unknown form, and what the author of a dish wrote, stays as it is.
 */
export const CAUTION_WORDS_DE: CautionWords = {
  tellCaution: (code, text) => PLAIN[code] ?? FIGURED[code]?.(text) ?? text,
  tellAuthority: (authority) =>
    AUTHORITIES.reduce((told, [english, german]) => told.replace(english, german), authority),
};

/** What stands in the names of authorities, and of those who wrote dishes. */
const AUTHORITIES: readonly (readonly [english: string, german: string])[] = [
  ["Halfloaf's own rule", "Regel von Halfloaf"],
  ["the dish's author", "wer das Gericht schrieb"],
  ["WHO, five keys to safer food", "WHO, fünf Schlüssel zu sicheren Lebensmitteln"],
  ["for eggs without a safety mark", "für Eier ohne Prüfzeichen"],
  ["UK food hygiene law", "Lebensmittelhygienerecht des Vereinigten Königreichs"],
  ["UK FSA guidance", "Rat der UK FSA"],
  ["leftovers within 2 days; FoodSafety.gov says 3-4", "Reste innerhalb von 2 Tagen; FoodSafety.gov sagt 3 bis 4"],
  ["rice: chill within an hour, one day", "Reis: innerhalb einer Stunde kühlen, ein Tag"],
  ["frozen: FoodSafety.gov", "gefroren: FoodSafety.gov"],
  ["soups and stews 2-3 months", "Suppen und Eintöpfe 2 bis 3 Monate"],
  ["one day for its texture", "ein Tag, damit es nicht weich wird"],
  ["one day for raw vegetables in it", "ein Tag wegen des rohen Gemüses darin"],
  ["common practice, no source", "allgemeine Praxis, ohne Quelle"],
  ["unheated dishes within a day", "nicht erhitzte Gerichte innerhalb eines Tages"],
  ["dressed raw salads are eaten within a day", "angemachte rohe Salate innerhalb eines Tages"],
  ["a dressed raw salad goes limp", "ein angemachter roher Salat fällt zusammen"],
  ["eaten the day it is made", "am selben Tag gegessen"],
  ["kept cold and covered; frozen at once they keep three months", "kalt und zugedeckt; sofort gefroren drei Monate"],
  [
    "the sauce keeps two days; set eggs are best eaten the same or the next day",
    "die Soße hält zwei Tage; gestocktes Ei am selben oder am nächsten Tag",
  ],
  [
    "chilled soaked oats within two days; the label of the drink comes first",
    "gekühlte eingeweichte Haferflocken innerhalb von zwei Tagen; was auf der Packung des Getränks steht, geht vor",
  ],
  ["from memory", "aus dem Gedächtnis"],
  [" and ", " und "],
];

const PLAIN: Readonly<Record<string, string>> = {
  "label-first": "Was auf der Packung steht, örtliche Vorschriften und ärztlicher Rat gehen vor.",
  "raw-apart":
    "Halt rohes Fleisch, rohen Fisch und rohe Eier getrennt: eigenes Brett und Messer, oder zuletzt auf dem Brett; dann wasch die Hände und alles, was damit in Berührung kam.",
  "no-rinse": "Spül rohes Geflügel nicht ab: das verteilt Keime.",
  "wash-soil": "Wasch die Erde vor dem Schneiden unter fließendem Wasser ab.",
  "raw-flour": "Koste nicht von rohem Teig.",
  sprouts: "Erhitz Sprossen, bis sie dampfen, außer wenn auf der Packung „verzehrfertig“ steht.",
  "frozen-produce": "Gar gefrorenes Obst und Gemüse durch, außer wenn auf der Packung „verzehrfertig“ steht.",
  "liver-pregnancy": "Keine Leber in der Schwangerschaft: sie enthält sehr viel Retinol.",
  "honey-infants": "Kein Honig für ein Kind unter einem Jahr.",
  "egg-soft":
    "Weiches Ei ist nichts für Schwangere, kleine Kinder, alte oder kranke Menschen, außer wenn Packung und örtliche Vorschriften es erlauben.",
  "put-by":
    "Tau Gefrorenes im Kühlschrank auf und iss es innerhalb eines Tages, oder erhitz es gefroren. Erhitz es, bis es durch und durch dampft, einmal; frier es nie wieder ein.",
  "wash-after-raw": "Dann wasch Hände, Messer, Brett und alles, was mit dem Rohen in Berührung kam.",
};

const CORE_KINDS: Readonly<Record<string, string>> = {
  Poultry: "Geflügel",
  "Minced meat, sausages and offal": "Hackfleisch, Würste und Innereien",
  "Cuts of meat": "Fleisch am Stück",
  Fish: "Fisch",
  "Egg until firm, and what it is mixed into": "Ei, bis es fest ist, und alles, worin es steckt",
  "Leftovers, steaming right through": "Reste, durch und durch dampfend",
  "Cooked ham": "Kochschinken",
};

type Telling = (text: string) => string | undefined;

const tellCore: Telling = (text) => {
  const [, kind = "", tempC, hold, rest] =
    /^(.+): ([\d.]+) °C in the middle(?:, held for (.+?))?(?:, then a rest of (.+?))?\.$/.exec(text) ?? [];
  if (tempC === undefined || CORE_KINDS[kind] === undefined) return undefined;
  const held = hold === undefined ? "" : `, ${timeOf(hold)} lang gehalten`;
  const rested = rest === undefined ? "" : `, dann ${timeOf(rest)} Ruhe`;
  return `${CORE_KINDS[kind]}: innen ${tempC.replace(".", ",")} °C${held}${rested}.`;
};

const FIGURED: Readonly<Record<string, Telling>> = {
  "core-temperature": tellCore,
  "re-heat": tellCore,
  "kidney-beans": reading(
    /soak them (\d+) h or longer, .+ for (\d+) min or longer/,
    (hours, minutes) =>
      `Rohe Kidneybohnen sind giftig: weich sie mindestens ${hours} Std. ein, gieß das Wasser weg, koch sie mindestens ${minutes} Min. sprudelnd und bis sie weich sind; nie roh in den Schongarer.`,
  ),
  "room-time": reading(
    /at most (.+), in great heat (.+), all stays/,
    (room, hot) =>
      `Höchstens ${timeOf(room)} weder kalt noch heiß, bei großer Hitze ${timeOf(hot)}, alle Zeiten zusammengezählt.`,
  ),
  "chill-within": reading(
    /within (.+), in flat portions/,
    (time) => `Was aufgehoben wird, kommt innerhalb von ${timeOf(time)} flach portioniert in die Kälte.`,
  ),
  "eat-within": reading(/within (\d+) days? of cooking/, (days) =>
    counted(Number(days), {
      one: "Aus dem Kühlschrank innerhalb von 1 Tag nach dem Kochen essen.",
      other: `Aus dem Kühlschrank innerhalb von ${days} Tagen nach dem Kochen essen.`,
    }),
  ),
  "re-heat-times": (text) =>
    /once only/.test(text)
      ? "Nur einmal aufwärmen."
      : reading(/again (\d+) times/, (times) => `Höchstens ${times}-mal aufwärmen.`)(text),
  "carry-cold": reading(
    /at most (.+), in great heat (.+)\.$/,
    (room, hot) =>
      `Kalt mitnehmen, mit Kühlakku; außerhalb der Kälte höchstens ${timeOf(room)}, bei großer Hitze ${timeOf(hot)} lang.`,
  ),
  "hot-holding": reading(
    /^Waits (\d+) min for the plate: kept covered at ([\d.]+) °C/,
    (minutes, tempC) =>
      `Wartet ${minutes} Min. auf den Teller: zugedeckt bei ${tempC.replace(".", ",")} °C oder heißer halten.`,
  ),
  "thaw-at-once": reading(
    /takes about (\d+) h to thaw.* changed every (\d+) min/,
    (hours, minutes) =>
      `Im Kühlschrank taut es in etwa ${hours} Std. auf. Ist es noch gefroren, tau es in der Mikrowelle auf, oder in einem dichten Beutel in kaltem Wasser, das du alle ${minutes} Min. wechselst, nie im Warmen; dann gar es sofort. Oder iss ein anderes Gericht.`,
  ),
  thawed: reading(
    /used within (\d+) h of being thawed/,
    (hours) =>
      `Im Kühlschrank aufgetaut, auf einem Teller, der den Saft auffängt; nach dem Auftauen innerhalb von ${hours} Std. verwenden.`,
  ),
};

function reading(form: RegExp, tell: (...figures: string[]) => string): Telling {
  return (text) => {
    const [, ...figures] = form.exec(text) ?? [];
    return figures.length === 0 ? undefined : tell(...figures);
  };
}

/** "1 min 30 s" and "2 h" as they are written in German. */
function timeOf(time: string | undefined): string {
  return (time ?? "").replace(/\bmin\b/, "Min.").replace(/\bh\b/, "Std.");
}
