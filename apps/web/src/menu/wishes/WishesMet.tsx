import { missOfWish, type WeekPlan } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useNames } from "../../kitchen/useNames.ts";
import { useFurther } from "../../words/useFurther.ts";
import { tellMeant, tellWhen } from "./tellWish.ts";

interface WishesMetProps {
  readonly wishes: NonNullable<WeekPlan["wishes"]>;
  readonly currency: string;
}

/** How a menu comes to what was wished for: that all of it is met, or what is not, and why it was left. */
export default function WishesMet({ wishes, currency }: WishesMetProps): ReactNode {
  const { further, formats, words } = useFurther("wishes");
  const names = useNames();
  const { wishes: said } = further;
  const telling = { further, formats, names, sittings: words.sittings, currency };
  const missed = wishes.filter((wish) => missOfWish(wish) !== 0);
  if (missed.length === 0) return <p className="soft">{said.met(wishes.length)}</p>;
  return (
    <section className="caution stack tight" aria-label={said.missed(missed.length)}>
      <p>{said.missed(missed.length)}</p>
      <ul className="lines close">
        {missed.map((wish) => (
          <li key={JSON.stringify(wish)}>
            <b>{tellMeant(wish.what, telling)}</b>: {tellWhen(wish, telling)}
            <div className="small">
              {said.served(wish.served, `${formats.day(wish.from)} – ${formats.day(wish.to)}`)}
              {wish.missMinor !== undefined && `; ${said.tooDear(formats.money(wish.missMinor, currency))}`}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
