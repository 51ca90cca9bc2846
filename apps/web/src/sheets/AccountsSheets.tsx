import type { AccountLine } from "halfloaf/kitchen/record";
import { accountsSvg } from "halfloaf/sheet";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { PictureButtons } from "./PictureButtons.tsx";
import TableButtons from "./TableButtons.tsx";
import { useCatalogue } from "./useCatalogue.ts";
import { useFileName } from "./useFileName.ts";

/** The accounts that are shown as a picture, and all of them as a table. */
export default function AccountsSheets({ lines }: { readonly lines: readonly AccountLine[] }): ReactNode {
  const { further } = useFurther("sheets");
  const { view } = useKitchen();
  const catalogue = useCatalogue();
  const nameFile = useFileName();
  const { name, currency } = view.edited;
  const draw = (): string =>
    accountsSvg(lines, currency, catalogue.accounts(name, currency, lines), catalogue.sheet.figures);
  return (
    <>
      <PictureButtons name={further.sheets.accountsPicture} file={nameFile("accounts")} draw={draw} />
      <TableButtons tables={["accounts"]} />
    </>
  );
}
