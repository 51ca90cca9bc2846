import type { EditedKitchen } from "halfloaf/kitchen/record";
import { type Found, refuse } from "../words/Fault.ts";
import { tellUnknown } from "../words/unknownWords.ts";

/** The id of an eater, by id or by name, small and capital letters alike. */
export function findEater(word: string, { eaters }: Pick<EditedKitchen, "eaters">): Found<string> {
  const wanted = word.trim().toLowerCase();
  const found = eaters.find(
    ({ id, name }) => id === wanted || name.toLowerCase() === wanted || name.split(",")[0]?.toLowerCase() === wanted,
  );
  if (found !== undefined) return { ok: true, value: found.id };
  return refuse(
    tellUnknown(
      "eater",
      word,
      eaters.map(({ id }) => id),
      "of this kitchen",
    ),
  );
}
