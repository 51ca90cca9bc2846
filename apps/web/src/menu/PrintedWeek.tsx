import type { WeekPlan } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useNames } from "../kitchen/useNames.ts";
import { useWords } from "../words/WordsContext.tsx";

/** The plates of a week day by day, for paper alone, where the ribbons can't be scrolled. */
export function PrintedWeek({ week }: { readonly week: WeekPlan }): ReactNode {
  const { words, formats } = useWords();
  const names = useNames();
  const days = [...new Set(week.sittings.map(({ date }) => date))];
  return (
    <table className="table paper-only">
      <tbody>
        {days.map((day) => (
          <tr key={day}>
            <th scope="row">{formats.longDay(day)}</th>
            <td>
              {week.sittings
                .filter(({ date }) => date === day)
                .map(({ kind, dish, eaters }) => (
                  <div key={[kind, ...eaters].join()}>
                    {words.sittings[kind]}: {names.dish(dish)} ({eaters.map((id) => names.eater(id)).join(", ")})
                  </div>
                ))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
