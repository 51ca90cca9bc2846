import type { PriceListMapping } from "./priceListMapping.ts";

/** A column of a price list, by what a mapping calls it. */
export type PriceColumn = keyof PriceListMapping["columns"];

/**
 * Words by which the header of a list names its columns, folded, in English and German; the longer ones count first, so that
 * a "price per kg" is no price. **Source**: common practice, no source.
 */
export const COLUMN_WORDS: Readonly<Record<PriceColumn, readonly string[]>> = {
  unitPrice: [
    "price per kg",
    "price per l",
    "price kg",
    "price l",
    "per kg",
    "unit price",
    "base price",
    "grundpreis",
    "kilopreis",
    "literpreis",
    "preis kg",
    "preis je kg",
  ],
  price: ["price", "preis", "cost", "betrag", "verkaufspreis", "vk"],
  label: [
    "label",
    "goods",
    "product",
    "product name",
    "article",
    "item",
    "name",
    "description",
    "artikel",
    "artikelbezeichnung",
    "bezeichnung",
    "produkt",
    "ware",
    "beschreibung",
  ],
  shop: ["shop", "store", "branch", "laden", "markt", "geschaft", "filiale"],
  brand: ["brand", "maker", "manufacturer", "marke", "hersteller"],
  content: [
    "content",
    "contents",
    "holds",
    "size",
    "pack size",
    "quantity",
    "weight",
    "net",
    "inhalt",
    "menge",
    "fullmenge",
    "gewicht",
    "große",
    "grosse",
    "packung",
  ],
  date: ["date", "day", "seen", "seen on", "as of", "datum", "tag", "gesehen", "stand"],
  gtin: ["gtin", "ean", "ean code", "upc", "barcode", "bar code", "strichcode"],
  offer: ["offer", "deal", "multibuy", "promotion", "angebot", "aktion"],
  section: ["section", "department", "aisle", "category", "group", "abteilung", "kategorie", "warengruppe", "regal"],
};
