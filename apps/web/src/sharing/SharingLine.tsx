import { type ReactNode, useEffect } from "react";
import { Link, useLocation } from "wouter";
import { useDevice, useKitchen } from "../kitchen/KitchenProvider.tsx";
import { SCREENS } from "../shell/screens.ts";
import { useFurther } from "../words/useFurther.ts";
import { Reason } from "./Reason.tsx";
import { syncRun } from "./SyncRun.ts";
import "./sharing.css";
import { useShared } from "./shared.ts";
import { useSyncView } from "./useSyncView.ts";

/** Talks with the server that the open kitchen is shared on, and says quietly how that stands and who is there. */
export default function SharingLine(): ReactNode {
  useTalk();
  const { further } = useFurther("sharing");
  const view = useSyncView();
  const { sharing } = further;
  return (
    <div className="sharing-line small soft">
      <Link href="/kitchen" className={`sharing-state ${view?.state.kind ?? "joining"}`}>
        {sharing.states[view?.state.kind ?? "joining"]}
      </Link>
      <Others />
      {view !== undefined && view.state.kind !== "together" && view.unsent > 0 && (
        <span>{sharing.unsent(view.unsent)}</span>
      )}
      {view?.role !== undefined && view.role !== "keeper" && <span>{sharing.roleHere[view.role]}</span>}
      {view?.hasTrouble && <Reason reason="storage" />}
      {view?.state.kind === "refused" && <Reason reason={view.state.reason} />}
      {view !== undefined && view.returned.length > 0 && (
        <Link href="/kitchen" className="caution" role="alert">
          {sharing.returned(view.returned.length)}
        </Link>
      )}
      <Forbidden />
    </div>
  );
}

/** Starts the talk of the open kitchen, and tells the others where this device is. */
function useTalk(): void {
  const { session } = useKitchen();
  const { device } = useDevice();
  const { open: id, by } = device;
  const shared = useShared(id);
  const [location] = useLocation();
  const at = SCREENS.find(({ path }) => path === location)?.name;
  const { server, kitchen, device: name, credential } = shared ?? {};
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the device may do is not what it talks for.
  useEffect(() => {
    if (id === undefined || shared === undefined) return undefined;
    return syncRun.start(session, id, shared);
  }, [session, id, server, kitchen, name, credential]);
  useEffect(() => {
    syncRun.sayPlace({ ...(by === undefined ? {} : { by }), ...(at === undefined ? {} : { at }) });
  }, [by, at]);
}

/** Who else is in the kitchen now, and on which screen. */
function Others(): ReactNode {
  const { words, further } = useFurther("sharing");
  const { view: kitchen } = useKitchen();
  const { device } = useDevice();
  const own = useShared(device.open)?.device;
  const view = useSyncView();
  const others = view?.here.filter((each) => each.device !== own) ?? [];
  const told = others.map(({ name, by, at }) => {
    const who = kitchen.edited.eaters.find(({ id }) => id === by)?.name ?? name;
    const where = SCREENS.find((screen) => screen.name === at)?.name;
    return where === undefined ? who : `${who} (${words.screens[where]})`;
  });
  return told.length > 0 && <span>{further.sharing.here(told.join(", "))}</span>;
}

/** That the last act was not done, since this device may not do it. */
function Forbidden(): ReactNode {
  const { further } = useFurther("sharing");
  const { session } = useKitchen();
  const role = useSyncView()?.role;
  const { sharing } = further;
  if (!session.isForbidden || role === undefined) return null;
  return (
    <div className="sheet row spread forbidden" role="alert">
      <span>{sharing.forbidden[role]}</span>
      <button type="button" className="button" onClick={() => session.readForbidden()}>
        {sharing.understood}
      </button>
    </div>
  );
}
