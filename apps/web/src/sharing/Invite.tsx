import { HostDesk, type ListedInvitation, ROLES, type Role, toInvitationLink } from "@halfloaf/keep/sync";
import { type ReactNode, useCallback, useEffect, useId, useState } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useFurther } from "../words/useFurther.ts";
import { Reason } from "./Reason.tsx";
import type { Shared } from "./shared.ts";
import { tellMoment } from "./tellMoment.ts";
import { useSyncView } from "./useSyncView.ts";

const QrCode = lazily(() => import("./QrCode.tsx"));

/** Invites a device by a link that lets one in, once, and lists the invitations that nobody has used yet. */
export function Invite({ shared }: { readonly shared: Shared }): ReactNode {
  const { further, formats } = useFurther("sharing");
  const { sharing } = further;
  const [role, setRole] = useState<Role>("cook");
  const [link, setLink] = useState<string>();
  const [open, setOpen] = useState<readonly ListedInvitation[]>([]);
  const [reason, setReason] = useState<string>();
  // Who comes in uses an invitation up.
  const here = useSyncView()
    ?.here.map(({ device }) => device)
    .join();
  const list = useCallback(async (): Promise<void> => {
    const listed = await new HostDesk(fetch).listInvitations(shared);
    if (listed.ok) setOpen(listed.value);
  }, [shared]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: who is there tells when to look again.
  useEffect(() => void list(), [list, here]);
  const invite = async (): Promise<void> => {
    // One that is not there yet must not be taken for the one before, which may be used up.
    setLink(undefined);
    const invited = await new HostDesk(fetch).invite(shared, role);
    setReason(invited.ok ? undefined : invited.reason);
    setLink(invited.ok ? toInvitationLink(invited.value) : undefined);
    await list();
  };
  const revoke = async (invitation: string): Promise<void> => {
    const revoked = await new HostDesk(fetch).revoke(shared, invitation);
    setReason(revoked.ok ? undefined : revoked.reason);
    setLink(undefined);
    await list();
  };
  return (
    <section className="stack tight" aria-labelledby="sharing-invite">
      <h3 id="sharing-invite">{sharing.invite}</h3>
      <div className="fields">
        <ChoiceField
          label={sharing.may}
          value={role}
          choices={ROLES.map((each) => [each, sharing.roles[each]] as const)}
          onChange={setRole}
        />
        <button type="button" className="button main" onClick={() => void invite()}>
          {sharing.makeInvitation}
        </button>
      </div>
      {reason !== undefined && <Reason reason={reason} />}
      {isOfThisMachine(shared.server) && <p className="caution">{sharing.onlyThisMachine}</p>}
      {link !== undefined && <InvitationLink link={link} />}
      {open.length > 0 && <p>{sharing.openInvitations}</p>}
      <ul className="lines">
        {open.map(({ invitation, role: may, expiresAtMs }) => (
          <li key={invitation} className="line-with-ways two-ways">
            <span>
              {sharing.roles[may]}
              <span className="small soft"> {sharing.until(tellMoment(expiresAtMs, formats))}</span>
            </span>
            <span className="row">
              <button type="button" className="button" onClick={() => void revoke(invitation)}>
                {sharing.revoke}
              </button>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** True for addresses that other devices take for their own. */
function isOfThisMachine(server: string): boolean {
  const { hostname } = new URL(server);
  return ["localhost", "[::1]"].includes(hostname) || hostname.startsWith("127.");
}

function InvitationLink({ link }: { readonly link: string }): ReactNode {
  const { further } = useFurther("sharing");
  const { sharing } = further;
  const field = useId();
  const [told, setTold] = useState("");
  const copy = async (): Promise<void> => {
    // Without HTTPS there is no clipboard; the link stands there to be copied by hand.
    await navigator.clipboard.writeText(link).then(
      () => setTold(sharing.copied),
      () => setTold(sharing.copyByHand),
    );
  };
  return (
    <div className="invitation sheet">
      <p>{sharing.invitationNote}</p>
      <label className="field" htmlFor={field}>
        {sharing.link}
        <input id={field} readOnly value={link} onFocus={(event) => event.target.select()} />
      </label>
      <div className="row">
        {navigator.clipboard !== undefined && (
          <button type="button" className="button" onClick={() => void copy()}>
            {sharing.copy}
          </button>
        )}
        <span role="status">{told}</span>
      </div>
      <Awaited isQuiet>
        <QrCode text={link} label={sharing.qr} />
      </Awaited>
    </div>
  );
}
