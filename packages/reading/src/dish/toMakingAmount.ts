import type { Making } from "halfloaf/dish";
import type { Food } from "halfloaf/food";
import type { MakingsChoice, MakingsLine } from "../line/makingsLine.ts";
import { type English, toAmount } from "../line/toAmount.ts";
import { UNIT_WORDS, type UnitWord } from "../line/unitWords.ts";
import { type Field, reckoned, told } from "../method/DraftStep.ts";

type Amount = Making["amount"];
type Pieces = Extract<Amount, { unit: "piece" }>;

/** An amount of a food, and whether it still holds the refuse. */
export interface AmountFound {
  readonly amount: Field<Amount>;
  readonly as?: Field<"purchased">;
}

/**
 * The amount that a line tells of a food, as a dish states it; undefined where it tells one that is no amount of this food
 * ("1 tin" of a food that has no size "tin"). No amount at all, and one such as a handful of a food whose handful is not
 * known, is "to taste", marked as a guess. What a pack holds is the mass as purchased. Without `food` pieces have no size.
 */
export function toMakingAmount(
  line: Pick<MakingsLine, "toTaste">,
  choice: MakingsChoice,
  food: Pick<Food, "pieces"> | undefined,
  english: English,
): AmountFound | undefined {
  const { amount, sure, reason } = toAmount(line, choice, english);
  const unit = choice.amount?.told[0]?.parts[0]?.unit;
  const fitted = amount === undefined ? undefined : fitPieces(amount, food);
  const isUnfit = amount !== undefined && fitted !== undefined && isNamed(amount) && !isNamed(fitted);
  if (choice.amount === undefined && fitted === undefined) return UNSAID;
  if (isLoose(unit) && (fitted === undefined || isUnfit)) return UNSAID;
  // A unit that is no size of the food tells no amount of it; a size that the table lacks leaves the piece itself.
  if (fitted === undefined || (isUnfit && unit !== undefined)) return undefined;
  if (isUnfit) return { amount: reckoned(fitted, "likely", "size-not-in-table") };
  const field = sure === "sure" ? told(fitted) : reckoned(fitted, sure, reason ?? "amount-unsure");
  const isPack = unit !== undefined && UNIT_WORDS[unit].kind === "pack" && !isPieces(fitted);
  return isPack ? { amount: field, as: reckoned("purchased", "likely", "pack-with-refuse") } : { amount: field };
}

const UNSAID: AmountFound = { amount: reckoned("to-taste", "guess", "amount-unsaid") };

function isLoose(unit: UnitWord | undefined): boolean {
  return unit !== undefined && UNIT_WORDS[unit].kind === "loose";
}

function isPieces(amount: Amount): amount is Pieces {
  return amount !== "to-taste" && amount.unit === "piece";
}

function isNamed(amount: Amount): boolean {
  return isPieces(amount) && amount.size !== undefined;
}

/** Pieces with the table's own word for their size, or without a size where the table has none like it. */
function fitPieces(amount: Amount, food: Pick<Food, "pieces"> | undefined): Amount {
  if (!isPieces(amount) || amount.size === undefined) return amount;
  const { size: word, ...rest } = amount;
  const sizes = food?.pieces.map(({ size }) => size) ?? [];
  const size =
    sizes.find((each) => each.toLowerCase() === word.toLowerCase()) ??
    sizes.find((each) =>
      each
        .toLowerCase()
        .split(/[\s,]+/)
        .includes(word.toLowerCase()),
    );
  return size === undefined ? rest : { ...rest, size };
}
