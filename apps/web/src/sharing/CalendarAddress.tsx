import { HostDesk, type ListedCalendar } from "@halfloaf/keep/sync";
import { toCalendarTemplates } from "halfloaf/sheet";
import { type ReactNode, useCallback, useEffect, useId, useState } from "react";
import { useCatalogue } from "../sheets/useCatalogue.ts";
import { useFurther } from "../words/useFurther.ts";
import { Reason } from "./Reason.tsx";
import type { Shared } from "./shared.ts";
import { tellMoment } from "./tellMoment.ts";

/** Addresses at which calendars read what is cooked and bought: made, listed, revoked by who made them or a keeper. */
export default function CalendarAddress({ shared }: { readonly shared: Shared }): ReactNode {
  const { further, formats } = useFurther("sharing");
  const { sharing } = further;
  const { sheet } = useCatalogue();
  const [address, setAddress] = useState<string>();
  const [calendars, setCalendars] = useState<readonly ListedCalendar[]>([]);
  const [reason, setReason] = useState<string>();
  const list = useCallback(async (): Promise<void> => {
    const listed = await new HostDesk(fetch).listCalendars(shared);
    if (listed.ok) setCalendars(listed.value);
  }, [shared]);
  useEffect(() => void list(), [list]);
  const make = async (): Promise<void> => {
    setAddress(undefined);
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const manner = { language: sheet.language, zone, words: toCalendarTemplates(sheet.calendar) };
    const made = await new HostDesk(fetch).makeCalendar(shared, manner);
    setReason(made.ok ? undefined : made.reason);
    setAddress(made.ok ? made.value.address : undefined);
    await list();
  };
  const revoke = async (calendar: string): Promise<void> => {
    const revoked = await new HostDesk(fetch).removeCalendar(shared, calendar);
    setReason(revoked.ok ? undefined : revoked.reason);
    setAddress(undefined);
    await list();
  };
  return (
    <section className="stack tight" aria-labelledby="sharing-calendars">
      <h3 id="sharing-calendars">{sharing.calendars}</h3>
      <p className="small soft">{sharing.calendarsAbout}</p>
      {reason !== undefined && <Reason reason={reason} />}
      <div className="row">
        <button type="button" className="button" onClick={() => void make()}>
          {sharing.makeCalendar}
        </button>
      </div>
      {address !== undefined && <MadeAddress address={address} />}
      <ul className="lines">
        {calendars.map(({ calendar, madeBy, madeAtMs, seenAtMs }) => (
          <li key={calendar} className="line-with-ways two-ways">
            <span>
              {sharing.madeOn(tellMoment(madeAtMs, formats))}
              {madeBy === shared.device && ` ${sharing.byThisOne}`}
              <br />
              <span className="small soft">{sharing.askedFor(tellMoment(seenAtMs, formats))}</span>
            </span>
            {(madeBy === shared.device || shared.role === "keeper") && (
              <span className="row">
                <button type="button" className="button" onClick={() => void revoke(calendar)}>
                  {sharing.revoke}
                </button>
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function MadeAddress({ address }: { readonly address: string }): ReactNode {
  const { further } = useFurther("sharing");
  const { sharing } = further;
  const field = useId();
  return (
    <div className="invitation sheet">
      <p>{sharing.calendarNote}</p>
      <label className="field" htmlFor={field}>
        {sharing.calendarLink}
        <input id={field} readOnly value={address} onFocus={(event) => event.target.select()} />
      </label>
      <p>
        <a href={address.replace(/^https?:/, "webcal:")}>{sharing.openCalendar}</a>
      </p>
    </div>
  );
}
