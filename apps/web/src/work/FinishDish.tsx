import { type CookWish, cook, Pen } from "halfloaf/kitchen/record";
import { type ReactNode, useState } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import type { KitchenView } from "../kitchen/KitchenSession.ts";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { wishFor } from "./wishFor.ts";

/** What was told of one dish, over what the kitchen took it to be. */
export type CookedDish = Pick<CookWish, "portions" | "sitting" | "really" | "plates" | "boxes"> & {
  readonly isSound: boolean;
};

interface FinishDishProps {
  readonly dish: string;
  readonly portions: number;
  readonly onTell: (cooked: CookedDish) => void;
}

const SITTINGS = ["morning", "midday", "between", "evening"] as const;
/** Plates and pots are not weighed to the gram: so little too much is taken for enough. */
const DUST_PORTIONS = 0.01;

/** One dish that was cooked: portions, plates, and what of each food really went in. */
export function FinishDish({ dish, portions, onTell }: FinishDishProps): ReactNode {
  const { further, formats, words } = useFurther("dishes", "work");
  const { view } = useKitchen();
  const names = useNames();
  const [planned] = useState(() => wishFor(view, dish, portions));
  const [made, setMade] = useState<number | undefined>(portions);
  const [sitting, setSitting] = useState<(typeof SITTINGS)[number] | "">(planned?.sitting ?? "");
  const [plates, setPlates] = useState<Readonly<Record<string, number | undefined>>>(() =>
    Object.fromEntries((planned?.plates ?? []).map(({ eater, portions: share }) => [eater ?? "", round(share)])),
  );
  const [boxes, setBoxes] = useState<number | undefined>(planned?.boxes?.length ?? 0);
  const [really, setReally] = useState<Readonly<Record<string, number | undefined>>>({});
  if (planned === undefined) return null;
  const uses = listUses(view, planned);
  const eaten = sitting === "" ? 0 : Object.values(plates).reduce((sum: number, each) => sum + (each ?? 0), 0);
  const boxPortions = planned.boxes?.[0] ?? view.kitchen.puttingBy?.portions ?? 1;
  const mayFreeze = planned.dish.keeps.freezerDays !== undefined && view.kitchen.kit.freezerLitres > 0;
  const left = (made ?? 0) - eaten - (boxes ?? 0) * boxPortions;
  const tell = (next: {
    made?: number | undefined;
    sitting?: typeof sitting;
    plates?: typeof plates;
    really?: typeof really;
    boxes?: number | undefined;
  }) => {
    const all = { made, sitting, plates, really, boxes, ...next };
    const at = all.sitting;
    const served = Object.entries(all.plates).flatMap(([eater, share]) =>
      share !== undefined && share > 0 ? [{ eater, portions: share }] : [],
    );
    const sum = served.reduce((total, each) => total + each.portions, 0);
    const numbers = [...Object.values(all.plates), ...Object.values(all.really)];
    const gone = (at === "" ? 0 : sum) + (all.boxes ?? 0) * boxPortions;
    const isMade = all.made !== undefined && all.made > 0 && gone <= all.made + DUST_PORTIONS;
    const isCount = all.boxes === undefined || (Number.isInteger(all.boxes) && all.boxes >= 0);
    const masses = Object.entries(all.really).flatMap(([food, massG]) => (massG === undefined ? [] : [[food, massG]]));
    onTell({
      portions: all.made ?? 0,
      ...(at !== "" && { sitting: at }),
      plates: at === "" ? [] : served,
      really: Object.fromEntries(masses),
      boxes: isCount ? Array.from({ length: all.boxes ?? 0 }, () => boxPortions) : [],
      isSound: isMade && isCount && numbers.every((each) => each === undefined || each >= 0),
    });
  };
  return (
    <section className="sheet stack tight">
      <h3>{names.dish(dish)}</h3>
      <div className="fields">
        <NumberField
          label={further.finish.portions}
          value={round(portions)}
          onChange={(value) => {
            setMade(value);
            tell({ made: value });
          }}
        />
        <ChoiceField
          label={further.finish.eatenAt}
          value={sitting}
          choices={[["", further.finish.later], ...SITTINGS.map((each) => [each, words.sittings[each]] as const)]}
          onChange={(value) => {
            setSitting(value);
            tell({ sitting: value });
          }}
        />
      </div>
      {sitting !== "" && (
        <fieldset className="group">
          <legend>{further.finish.plates}</legend>
          <div className="fields">
            {view.kitchen.eaters.map(({ id, name }) => (
              <NumberField
                key={id}
                label={name}
                value={plates[id]}
                onChange={(value) => {
                  const next = { ...plates, [id]: value };
                  setPlates(next);
                  tell({ plates: next });
                }}
              />
            ))}
          </div>
        </fieldset>
      )}
      {mayFreeze && (
        <div className="fields">
          <NumberField
            label={further.finish.boxes(boxPortions, formats.number(boxPortions))}
            value={boxes}
            onChange={(value) => {
              setBoxes(value);
              tell({ boxes: value });
            }}
            isWhole
          />
        </div>
      )}
      <p role="status" className={left < -DUST_PORTIONS ? "caution" : undefined}>
        {left < -DUST_PORTIONS
          ? further.finish.tooMuch
          : left <= DUST_PORTIONS
            ? further.finish.nothingLeft
            : further.finish.left(left, formats.number(left), further.dishes.fridgeDays(planned.dish.keeps.fridgeDays))}
      </p>
      <details className="fold">
        <summary>
          <span>{further.finish.used}</span>
        </summary>
        <p className="small soft">{further.finish.usedNote}</p>
        <div className="fields">
          {uses.map(({ food, massG }) => (
            <NumberField
              key={food}
              label={names.food(food)}
              value={massG === undefined ? undefined : Math.round(massG)}
              onChange={(value) => {
                const next = { ...really, [food]: value };
                setReally(next);
                tell({ really: next });
              }}
            />
          ))}
        </div>
      </details>
    </section>
  );
}

function round(portions: number): number {
  return Math.round(portions * 100) / 100;
}

/** g as purchased of each food that the kitchen would book; undefined where that is not known. */
function listUses(
  { state, tables }: KitchenView,
  { plates: _plates, ...wish }: CookWish,
): { readonly food: string; readonly massG?: number }[] {
  const trial = new Pen({ device: "trial", nowMs: 0 }, 0, undefined);
  const { uses, unbooked = [] } = cook(state, tables.foods, wish, trial).cooked;
  const masses = new Map<string, number | undefined>();
  const booked = uses.flatMap(({ lot, massG }) => ({ food: state.lots.get(lot)?.food ?? lot, massG }));
  for (const { food, massG } of [...booked, ...unbooked])
    masses.set(food, massG === undefined ? masses.get(food) : (masses.get(food) ?? 0) + massG);
  return [...masses].map(([food, massG]) => (massG === undefined ? { food } : { food, massG }));
}
