import { foodName } from "halfloaf/food";
import { type ReactNode, useMemo } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { MoneyField } from "../kitchen/fields/MoneyField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import type { Starter } from "../kitchen/loadStarter.ts";
import { useFurther } from "../words/useFurther.ts";
import { CURRENCIES, type PageProps } from "./Answers.ts";

/** How much money there is for a week, and what need not be bought. */
export function MoneyPage({ answers, onChange, starter }: PageProps & { readonly starter: Starter }): ReactNode {
  const { further, language } = useFurther("first");
  const { first } = further;
  const { currency, budgetMinor, cupboard, english } = answers;
  const names = useMemo(() => new Intl.DisplayNames(language, { type: "currency" }), [language]);
  const choices = CURRENCIES.map((code) => [code, `${names.of(code)} (${code})`] as const);
  const tick = (food: string, isThere: boolean): void => {
    const others = cupboard.filter((each) => each !== food);
    onChange({ ...answers, cupboard: isThere ? [...others, food] : others });
  };
  return (
    <>
      <div className="fields">
        <MoneyField
          key={currency}
          label={first.money}
          value={budgetMinor}
          currency={currency}
          onChange={(minor) => onChange({ ...answers, budgetMinor: minor })}
        />
        <ChoiceField
          label={first.currency}
          value={currency}
          choices={choices}
          onChange={(code) => onChange({ ...answers, currency: code })}
        />
      </div>
      <p className="small soft">{first.moneyNote}</p>
      <fieldset className="group">
        <legend>
          <h2>{first.cupboard}</h2>
        </legend>
        <p className="small soft">{first.cupboardNote}</p>
        <div className="ticks">
          {starter.shops.cupboard.map(({ food }) => (
            <TickField
              key={food}
              label={foodName(starter.tables.foods.get(food), english, language) ?? food}
              isTicked={cupboard.includes(food)}
              onChange={(isThere) => tick(food, isThere)}
            />
          ))}
        </div>
      </fieldset>
    </>
  );
}
