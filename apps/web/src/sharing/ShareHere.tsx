import { HostDesk } from "@halfloaf/keep/sync";
import { type ReactNode, useState } from "react";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Reason } from "./Reason.tsx";
import { writeShared } from "./shared.ts";
import { usualDeviceName } from "./usualDeviceName.ts";

/** Shares the kitchen of that database on the server that the app came from, with this device as its keeper. */
export function ShareHere({ id }: { readonly id: string }): ReactNode {
  const { further } = useFurther("sharing");
  const { sharing } = further;
  const [name, setName] = useState(() => usualDeviceName(sharing));
  const [code, setCode] = useState("");
  const [reason, setReason] = useState<string>();
  const [isBusy, setBusy] = useState(false);
  const share = async (): Promise<void> => {
    setBusy(true);
    const made = await new HostDesk(fetch).makeKitchen(location.origin, name.trim(), code.trim() || undefined);
    setBusy(false);
    if (!made.ok) setReason(made.reason);
    else if (!writeShared(id, { ...made.value, role: "keeper" })) setReason("no-room");
  };
  return (
    <>
      <p>{sharing.about(location.host)}</p>
      <p className="small soft">{sharing.operator}</p>
      <div className="fields">
        <TextField label={sharing.deviceName} value={name} onChange={setName} />
        {reason === "code-needed" && <TextField label={sharing.code} value={code} onChange={setCode} />}
      </div>
      {reason !== undefined && <Reason reason={reason} />}
      <div>
        <button
          type="button"
          className="button main"
          disabled={isBusy || name.trim() === ""}
          onClick={() => void share()}
        >
          {sharing.share}
        </button>
      </div>
    </>
  );
}
