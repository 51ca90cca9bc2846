/** A caution with the dishes it is about, by whatever they are told apart. */
interface CautionOfDishes<Of> {
  readonly code: string;
  readonly text: string;
  readonly dishes: readonly Of[];
}

/**
 * Cautions with those of the dishes' authors as the dishes tell them now: they may have been kept in another language. `authored`
 * gives those of a dish; undefined = it is not known any more, and its caution stays as it was kept.
 */
export function retellCautions<Of, Caution extends CautionOfDishes<Of>>(
  cautions: readonly Caution[],
  authored: (dish: Of) => readonly string[] | undefined,
): Caution[] {
  const told: Caution[] = [];
  const tell = (caution: Caution, text: string, dish: Of): void => {
    const at = told.findIndex((each) => each.code === "dish" && each.text === text);
    const dishes = [...new Set([...(told[at]?.dishes ?? []), dish])];
    told.splice(at < 0 ? told.length : at, 1, { ...caution, text, dishes });
  };
  for (const caution of cautions) {
    if (caution.code !== "dish") told.push(caution);
    else
      for (const dish of caution.dishes) for (const text of authored(dish) ?? [caution.text]) tell(caution, text, dish);
  }
  return told;
}
