import type { FaultWords } from "../../fault/FaultWords.ts";
import { CODE_WORDS_DE } from "./codeWordsDe.ts";
import { HINTS_DE, REMEDIES_DE } from "./keyWordsDe.ts";

/** What is wrong with a kitchen's file, in German. */
export const FAULT_WORDS_DE: FaultWords = {
  values: { nothing: "nichts", listOf: (count) => `eine Liste mit ${count} Einträgen` },
  nouns: {
    eaters: "Person",
    shops: "Laden",
    packs: "Packung",
    stores: "Posten",
    dishes: "Gericht",
    sittings: "Mahlzeit",
    ratings: "Bewertung",
    wishes: "Wunsch",
    putBy: "Vorgekochtes",
  },
  kitchen: "Die Küche",
  thing: (noun, name) => `${noun} ${name}`,
  thingAt: (noun, position, list) => `${noun} Nummer ${position} in ${list}`,
  of: (path, thing) => `${path} bei ${thing}`,
  sentence: (subject, says) => `${subject} ${says}.`,
  isThat: (value) => `ist ${value}`,
  asked: (expected) => `Verlangt ist ${expected}.`,
  strangeKey: (key) => ({
    says: `hat den Schlüssel ${key}, den es nicht gibt`,
    remedy: "Schreib ihn richtig oder nimm ihn heraus.",
  }),
  missingKey: (key, hint) => ({
    says: `hat kein ${key}`,
    remedy: hint === undefined ? "Füg es hinzu." : `Füg es hinzu: ${hint}.`,
  }),
  noObject: (value, hint) => ({
    says: `ist ${value}, kein Objekt in geschweiften Klammern`,
    remedy: hint === undefined ? "Schreib Schlüssel und Werte in geschweifte Klammern." : `Schreib ${hint}.`,
  }),
  near: (names) => `Ähnlich heißen: ${names}.`,
  codes: CODE_WORDS_DE,
  shapes: {
    unit: (unit, units) => ({
      says: `hat die Einheit ${unit}, die es nicht gibt`,
      remedy: `Schreib eine von ${units}.`,
    }),
    amount: (value) => ({
      says: `ist ${value}, was keine Menge ist`,
      remedy:
        'Schreib {"value": 200, "unit": "g"}, {"from": 2, "to": 3, "unit": "piece"} oder "to-taste", Zahlen über 0.',
    }),
    content: (value) => ({
      says: `ist ${value}, was keine Packungsgröße nennt`,
      remedy: 'Sag auf eine Weise, was in der Packung ist: {"massG": 500}, {"pieces": 6} oder {"volumeMl": 1000}.',
    }),
    handsOnMinutes: (value) => ({
      says: `ist ${value}`,
      remedy: "Schreib eine Zahl von Minuten ab 0, oder sieben in eckigen Klammern, Montag zuerst.",
    }),
  },
  hints: HINTS_DE,
  remedies: REMEDIES_DE,
};
