import { type ReactNode, useRef } from "react";
import { useFurther } from "../words/useFurther.ts";
import { saveFile } from "./saveFile.ts";

/** A page that was made: how it is called, its whole text, and the name it is saved under. */
export interface MadePage {
  readonly title: string;
  readonly html: string;
  readonly file: string;
}

/** A page as it is printed, in a frame of its own, so that nothing of the app is on the paper. */
export function PagePreview({ page }: { readonly page: MadePage }): ReactNode {
  const { further } = useFurther("sheets");
  const frame = useRef<HTMLIFrameElement>(null);
  const print = (): void => {
    const inside = frame.current?.contentWindow;
    inside?.focus();
    inside?.print();
  };
  return (
    <section className="stack tight" aria-label={page.title}>
      <div className="row">
        <button type="button" className="button main" onClick={print}>
          {further.sheets.print}
        </button>
        <button type="button" className="button" onClick={() => saveFile(`${page.file}.html`, page.html, "text/html")}>
          {further.sheets.savePage}
        </button>
      </div>
      <iframe ref={frame} className="page-preview" title={page.title} srcDoc={page.html} />
    </section>
  );
}
