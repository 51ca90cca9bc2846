import { HostDesk, type ListedDevice, ROLES, type Role } from "@halfloaf/keep/sync";
import { type ReactNode, useCallback, useEffect, useState } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Reason } from "./Reason.tsx";
import type { Shared } from "./shared.ts";
import { tellMoment } from "./tellMoment.ts";
import { useSyncView } from "./useSyncView.ts";

/** The devices that may come into the kitchen; a keeper gives them roles and removes them. */
export function Devices({ shared }: { readonly shared: Shared }): ReactNode {
  const { further, formats } = useFurther("sharing");
  const { sharing } = further;
  const [devices, setDevices] = useState<readonly ListedDevice[]>([]);
  const [reason, setReason] = useState<string>();
  const view = useSyncView();
  const list = useCallback(async (): Promise<void> => {
    const listed = await new HostDesk(fetch).listDevices(shared);
    if (listed.ok) setDevices(listed.value);
  }, [shared]);
  const isTogether = view?.state.kind === "together";
  const here = view?.here.map(({ device }) => device).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: who is there tells when to look again.
  useEffect(() => {
    if (isTogether) void list();
  }, [list, isTogether, here]);
  const change = async (device: string, role: Role): Promise<void> => {
    const changed = await new HostDesk(fetch).changeRole(shared, device, role);
    setReason(changed.ok ? undefined : changed.reason);
    await list();
  };
  const remove = async ({ device, name }: ListedDevice): Promise<void> => {
    if (!confirm(sharing.removeSure(name))) return;
    const removed = await new HostDesk(fetch).removeDevice(shared, device);
    setReason(removed.ok ? undefined : removed.reason);
    await list();
  };
  return (
    <section className="stack tight" aria-labelledby="sharing-devices">
      <h3 id="sharing-devices">{sharing.devices}</h3>
      {!isTogether && <p className="small soft">{sharing.devicesLater}</p>}
      {reason !== undefined && <Reason reason={reason} />}
      <ul className="lines">
        {devices.map((each) => (
          <li key={each.device} className="stack tight">
            <span>
              {each.name}
              {each.device === shared.device && ` ${sharing.thisOne}`}
              <br />
              <span className="small soft">
                {sharing.roles[each.role]}, {sharing.seen(tellMoment(each.seenAtMs, formats))}
              </span>
            </span>
            {shared.role === "keeper" && each.device !== shared.device && (
              <span className="row end spread">
                <ChoiceField
                  label={sharing.mayOf(each.name)}
                  value={each.role}
                  choices={ROLES.map((role) => [role, sharing.roles[role]] as const)}
                  onChange={(role) => void change(each.device, role)}
                />
                <button type="button" className="button" onClick={() => void remove(each)}>
                  {further.remove}
                  <span className="unseen"> {each.name}</span>
                </button>
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
