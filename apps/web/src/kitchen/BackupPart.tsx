import { type ReactNode, useState } from "react";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { FileDrop } from "../source/FileDrop.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Fold } from "./Fold.tsx";
import { useKitchen } from "./KitchenProvider.tsx";
import { saveBackup } from "./saveBackup.ts";

const RefusedFile = lazily(() => import("./RefusedFile.tsx"));

/** Everything of the kitchen into a file, and out of one. */
export function BackupPart(): ReactNode {
  const { further } = useFurther("kitchen");
  const { session, view } = useKitchen();
  const [told, setTold] = useState("");
  const [refused, setRefused] = useState<unknown>();
  const { kitchen } = further;
  const download = (): void => saveBackup(session.kept, view.edited.name, view.day);
  const restore = async (file: File): Promise<void> => {
    const before = session.kept.rawRows().length;
    const content = await file
      .text()
      .then((text): unknown => JSON.parse(text))
      .catch(() => undefined);
    const became = await session.bringIn(content);
    setRefused(became === "unreadable" ? content : undefined);
    if (became === "brought") setTold(kitchen.merged(session.kept.rawRows().length - before));
    else setTold(became === "other" ? kitchen.restoreOther : kitchen.restoreFailed);
  };
  return (
    <Fold title={kitchen.backup}>
      <p className="small soft">{kitchen.backupNote}</p>
      <div>
        <button type="button" className="button main" onClick={download}>
          {kitchen.download}
        </button>
      </div>
      <Allowed to="edited" otherwise={<RoleNote />}>
        <FileDrop label={kitchen.restore} accept=".json,application/json" onFile={(file) => void restore(file)} />
        <p className="small soft">{kitchen.restoreNote}</p>
      </Allowed>
      <p role="status">{told}</p>
      {refused !== undefined && (
        <Awaited isQuiet>
          <RefusedFile content={refused} />
        </Awaited>
      )}
    </Fold>
  );
}
