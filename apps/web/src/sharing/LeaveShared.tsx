import { HostDesk } from "@halfloaf/keep/sync";
import { type ReactNode, useState } from "react";
import { useFurther } from "../words/useFurther.ts";
import { Reason } from "./Reason.tsx";
import { type Shared, writeShared } from "./shared.ts";
import { useSyncView } from "./useSyncView.ts";

/** Takes this device out of the shared kitchen, or deletes the kitchen on the server; what is on the device stays there. */
export function LeaveShared({ id, shared }: { readonly id: string; readonly shared: Shared }): ReactNode {
  const { further } = useFurther("sharing");
  const { sharing } = further;
  const state = useSyncView()?.state;
  const [reason, setReason] = useState<string>();
  const leave = async (): Promise<void> => {
    if (!confirm(sharing.leaveSure)) return;
    if (state?.kind === "refused") return void writeShared(id, undefined);
    const left = await new HostDesk(fetch).removeDevice(shared, shared.device);
    if (left.ok) writeShared(id, undefined);
    else setReason(left.reason);
  };
  const remove = async (): Promise<void> => {
    if (!confirm(sharing.deleteSure)) return;
    const removed = await new HostDesk(fetch).deleteKitchen(shared);
    if (removed.ok) writeShared(id, undefined);
    else setReason(removed.reason);
  };
  return (
    <div className="stack tight">
      {reason !== undefined && <Reason reason={reason} />}
      <div className="row">
        <button type="button" className="button" onClick={() => void leave()}>
          {sharing.leave}
        </button>
        {shared.role === "keeper" && (
          <button type="button" className="button" onClick={() => void remove()}>
            {sharing.deleteThere}
          </button>
        )}
      </div>
      <p className="small soft">{sharing.leaveNote}</p>
    </div>
  );
}
