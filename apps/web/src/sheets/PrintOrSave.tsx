import { type ReactNode, useState } from "react";
import { Awaited } from "../loading/Awaited.tsx";
import "../kitchen/fields/fields.css";
import { useFurther } from "../words/useFurther.ts";
import "./sheets.css";

/** The place of a screen where sheets are printed and files are saved; what is in it is loaded once it is opened. */
export function PrintOrSave({ children }: { readonly children: ReactNode }): ReactNode {
  const { further } = useFurther("sheets");
  const [wasOpened, setOpened] = useState(false);
  return (
    <details className="fold sheet screen-only" onToggle={({ currentTarget }) => currentTarget.open && setOpened(true)}>
      <summary>
        <h2>{further.sheets.title}</h2>
        <span className="small soft">{further.sheets.brief}</span>
      </summary>
      <div className="stack fold-body">{wasOpened && <Awaited>{children}</Awaited>}</div>
    </details>
  );
}
