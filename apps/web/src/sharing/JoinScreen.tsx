import { type Invitation, parseInvitationLink } from "@halfloaf/keep/sync";
import { type ReactNode, useEffect, useState } from "react";
import { Link, useLocation } from "wouter";
import { Looking } from "../camera/Looking.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useDevice, useOpening } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { invited, takeLink } from "./invited.ts";
import { goOnJoining, type Joined, joinKitchen } from "./joinKitchen.ts";
import { Reason } from "./Reason.tsx";
import "../kitchen/fields/fields.css";
import { usualDeviceName } from "./usualDeviceName.ts";

/** Where an invitation leads: says what it is, asks, and brings the kitchen here. */
export default function JoinScreen(): ReactNode {
  const { further } = useFurther("sharing");
  const { sharing } = further;
  const [text, setText] = useState(invited.link ?? "");
  const [isLooking, setLooking] = useState(false);
  const { reason, isBusy, join } = useJoining();
  const opening = useOpening();
  useEffect(() => {
    const take = (): void => setText((known) => takeLink() ?? known);
    addEventListener("hashchange", take);
    return () => removeEventListener("hashchange", take);
  }, []);
  const invitation = parseInvitationLink(text);
  return (
    <div className="stack">
      <h1>{sharing.join}</h1>
      {invited.link === undefined && (
        <>
          <p>{sharing.joinAbout}</p>
          <Looking
            looksFor="qr"
            words={sharing.scan}
            isLooking={isLooking}
            onLooking={setLooking}
            onText={(read) => {
              setLooking(false);
              setText(read);
            }}
          />
          <TextField label={sharing.link} value={text} onChange={setText} />
        </>
      )}
      {invitation === undefined && text.trim() !== "" && <Reason reason="no-link" />}
      {invitation !== undefined && invitation.server !== location.origin && (
        <p>
          {sharing.elsewhere(new URL(invitation.server).host)} <a href={text.trim()}>{sharing.openThere}</a>
        </p>
      )}
      {invitation?.server === location.origin && <Ask invitation={invitation} isBusy={isBusy} onJoin={join} />}
      {isBusy && <p role="status">{sharing.comes}</p>}
      {reason !== undefined && <Reason reason={reason} />}
      {opening.kind === "none" && invitation === undefined && !isBusy && (
        <p>
          <Link href="/" className="way-back">
            {sharing.notNow}
          </Link>
        </p>
      )}
    </div>
  );
}

interface AskProps {
  readonly invitation: Invitation;
  readonly isBusy: boolean;
  readonly onJoin: (invitation: Invitation, name: string) => void;
}

/** Asks before anything is sent. */
function Ask({ invitation, isBusy, onJoin }: AskProps): ReactNode {
  const { further } = useFurther("sharing");
  const { sharing } = further;
  const [, goTo] = useLocation();
  const [name, setName] = useState(() => usualDeviceName(sharing));
  const leave = (): void => {
    invited.link = undefined;
    goTo("/");
  };
  return (
    <>
      <p>{sharing.joinSure(new URL(invitation.server).host)}</p>
      <p className="small soft">{sharing.operator}</p>
      <TextField label={sharing.deviceName} value={name} onChange={setName} />
      <div className="row">
        <button
          type="button"
          className="button main"
          disabled={isBusy || name.trim() === ""}
          onClick={() => onJoin(invitation, name.trim())}
        >
          {sharing.joinIt}
        </button>
        <button type="button" className="button" disabled={isBusy} onClick={leave}>
          {sharing.notNow}
        </button>
      </div>
    </>
  );
}

/** Joins, and goes on with a joining that was broken off. */
function useJoining() {
  const { device, change } = useDevice();
  const [, goTo] = useLocation();
  const [reason, setReason] = useState<string>();
  const [isBusy, setBusy] = useState(false);
  const follow = async (joining: Promise<Joined>): Promise<void> => {
    setBusy(true);
    const joined = await joining;
    setBusy(false);
    if (!joined.ok) return setReason(joined.reason);
    invited.link = undefined;
    change(joined.device);
    goTo("/");
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is gone on with once.
  useEffect(() => {
    const joining = goOnJoining(device);
    if (joining !== undefined) void follow(joining);
  }, []);
  const join = (invitation: Invitation, name: string): void => {
    setReason(undefined);
    void follow(joinKitchen(invitation, name, device));
  };
  return { reason, isBusy, join };
}
