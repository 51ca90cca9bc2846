import { type BrokenClaim, MONEY_CLAIMS, type SheetWords } from "halfloaf/sheet";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";

interface BrokenClaimsProps {
  readonly broken: readonly BrokenClaim[];
  readonly currency: string;
  readonly words: SheetWords;
}

/** The lines of a sheet that make its claims false; nothing was printed. */
export function BrokenClaims({ broken, currency, words }: BrokenClaimsProps): ReactNode {
  const { further } = useFurther("sheets");
  const { figures, day } = words;
  return (
    <div role="alert">
      <p>{further.sheets.refused}</p>
      <ul>
        {broken.map(({ claim, value, date, sitting, dish, eater }) => {
          const tell = (amount: number): string =>
            MONEY_CLAIMS.includes(claim.kind) ? figures.money(amount, currency) : figures.minutes(amount);
          const where = [
            date && figures.dayShort(date),
            sitting && figures.sitting(sitting),
            dish?.name,
            eater?.name,
          ].filter((each) => each !== undefined);
          const text = further.sheets.broken(day.claim(claim.kind, tell(claim.below)), where.join(", "), tell(value));
          return <li key={text}>{text}</li>;
        })}
      </ul>
    </div>
  );
}
