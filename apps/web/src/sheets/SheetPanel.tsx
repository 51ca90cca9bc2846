import type { BrokenClaim } from "halfloaf/sheet";
import { type ReactNode, useState } from "react";
import { BrokenClaims } from "./BrokenClaims.tsx";
import { type MadePage, PagePreview } from "./PagePreview.tsx";
import { PictureButtons, type PictureButtonsProps } from "./PictureButtons.tsx";
import { useCatalogue } from "./useCatalogue.ts";

/** What came of making a sheet: a page, the claims that are not true, or nothing to show, since a file was saved. */
export type Made = MadePage | readonly BrokenClaim[] | undefined;

interface SheetPanelProps {
  /** What is chosen before something is made. */
  readonly children: ReactNode;
  readonly currency: string;
  readonly ways: readonly { readonly name: string; readonly make: () => Made | Promise<Made> }[];
  readonly pictures: readonly PictureButtonsProps[];
}

/** What can be made of something: pages to look at, files to save, pictures. */
export function SheetPanel({ children, currency, ways, pictures }: SheetPanelProps): ReactNode {
  const catalogue = useCatalogue();
  const [made, setMade] = useState<Made>();
  return (
    <>
      {children}
      <div className="row">
        {ways.map(({ name, make }) => (
          <button
            key={name}
            type="button"
            className="button"
            onClick={() => void Promise.resolve(make()).then((fresh) => fresh !== undefined && setMade(fresh))}
          >
            {name}
          </button>
        ))}
      </div>
      {made !== undefined &&
        ("html" in made ? (
          <PagePreview page={made} />
        ) : (
          <BrokenClaims broken={made} currency={currency} words={catalogue.sheet} />
        ))}
      {pictures.map((picture) => (
        <PictureButtons key={picture.name} {...picture} />
      ))}
    </>
  );
}
