import { type ReactNode, useState } from "react";
import { KitForm } from "../kitchen/KitForm.tsx";
import { useFurther } from "../words/useFurther.ts";
import { KITS, type PageProps } from "./Answers.ts";

/** What there is to cook with: one of three, or every part by itself. */
export function KitPage({ answers, onChange }: PageProps): ReactNode {
  const { first } = useFurther("first").further;
  // Fields keep their own text, so those of another choice begin anew.
  const [chosen, setChosen] = useState(0);
  return (
    <>
      <p className="small soft">{first.kitNote}</p>
      <div className="stack tight">
        {(["small", "middle", "full"] as const).map((size) => {
          const [title, about] = first.kits[size];
          return (
            <button
              key={size}
              type="button"
              className="button offer"
              aria-pressed={KITS[size] === answers.kit}
              onClick={() => {
                setChosen(chosen + 1);
                onChange({ ...answers, kit: KITS[size] });
              }}
            >
              <span className="offer-title">{title}</span>
              <span className="small">{about}</span>
            </button>
          );
        })}
      </div>
      <details className="fold sheet">
        <summary>
          <h2>{first.kitDetails}</h2>
        </summary>
        <KitForm key={chosen} kit={answers.kit} onChange={(kit) => onChange({ ...answers, kit })} />
      </details>
    </>
  );
}
