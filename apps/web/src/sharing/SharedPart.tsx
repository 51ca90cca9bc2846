import type { ReactNode } from "react";
import { Link } from "wouter";
import { Fold } from "../kitchen/Fold.tsx";
import { useDevice } from "../kitchen/KitchenProvider.tsx";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import { Devices } from "./Devices.tsx";
import { Invite } from "./Invite.tsx";
import { LeaveShared } from "./LeaveShared.tsx";
import { Returned } from "./Returned.tsx";
import { ShareHere } from "./ShareHere.tsx";
import "./sharing.css";
import { useShared } from "./shared.ts";
import { useSyncView } from "./useSyncView.ts";

const CalendarAddress = lazily(() => import("./CalendarAddress.tsx"));

/** With whom the kitchen is shared, and how others come in. */
export function SharedPart(): ReactNode {
  const { further } = useFurther("sharing");
  const { device } = useDevice();
  const shared = useShared(device.open);
  const view = useSyncView();
  const { sharing } = further;
  if (device.open === undefined) return null;
  const brief = shared === undefined ? sharing.withNobody : sharing.states[view?.state.kind ?? "joining"];
  return (
    <Fold title={sharing.title} brief={brief}>
      {shared === undefined ? (
        <ShareHere id={device.open} />
      ) : (
        <>
          <p>{sharing.sharedOn(new URL(shared.server).host)}</p>
          <p className="small soft">{sharing.operator}</p>
          <Returned />
          {/* A server that lets this device in no more answers none of its questions. */}
          {view?.state.kind !== "refused" && (
            <>
              {shared.role === "keeper" && <Invite shared={shared} />}
              <Devices shared={shared} />
              <Awaited isQuiet>
                <CalendarAddress shared={shared} />
              </Awaited>
            </>
          )}
          <LeaveShared id={device.open} shared={shared} />
        </>
      )}
      <p>
        <Link href="/join">{sharing.joinAnother}</Link>
      </p>
    </Fold>
  );
}
