import type { ReactNode } from "react";
import { lazily } from "../loading/lazily.ts";
import { SharedPart } from "../sharing/SharedPart.tsx";
import { PrintOrSave } from "../sheets/PrintOrSave.tsx";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { AuthorityPart } from "./AuthorityPart.tsx";
import { BackupPart } from "./BackupPart.tsx";
import { DevicePart } from "./DevicePart.tsx";
import { EatersPart } from "./EatersPart.tsx";
import "./fields/fields.css";
import { HistoryPart } from "./HistoryPart.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { KitPart } from "./KitPart.tsx";
import { LazyFold } from "./LazyFold.tsx";
import { LimitsPart } from "./LimitsPart.tsx";
import { PutByPart } from "./PutByPart.tsx";
import { ShopsPart } from "./ShopsPart.tsx";
import { SittingsPart } from "./SittingsPart.tsx";
import { WorthPart } from "./WorthPart.tsx";

const PaceList = lazily(() => import("./PaceList.tsx"));
const VarietyList = lazily(() => import("./variety/VarietyList.tsx"));
const TableButtons = lazily(() => import("../sheets/TableButtons.tsx"));

/** Who eats, with what kit, within which limits, by which authority, on which devices. */
export default function KitchenScreen(): ReactNode {
  const { words, further } = useFurther("kitchen");
  const { view } = useKitchen();
  const { name, limits } = view.edited;
  const { variety } = limits;
  return (
    <div className="stack">
      <div className="row spread head-stays">
        <h1>{words.screens.kitchen}</h1>
        <Undo />
      </div>
      <p className="soft">{name}</p>
      <EatersPart />
      <KitPart />
      <SittingsPart />
      <LimitsPart />
      <LazyFold
        title={further.kitchen.variety}
        brief={variety.length === 0 ? further.none : further.kitchen.ruleCount(variety.length)}
        className="variety"
      >
        <VarietyList />
      </LazyFold>
      <PutByPart />
      <WorthPart />
      <LazyFold title={further.kitchen.pace} brief={further.kitchen.paceBrief} className="pace">
        <PaceList />
      </LazyFold>
      <ShopsPart />
      <AuthorityPart />
      <SharedPart />
      <DevicePart />
      <BackupPart />
      <PrintOrSave>
        <TableButtons tables={["prices", "stores", "movements", "accounts"]} />
      </PrintOrSave>
      <HistoryPart />
    </div>
  );
}
