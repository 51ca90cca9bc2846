import type { CivilDate } from "halfloaf/quantity";
import type { LotState } from "halfloaf/stores";
import { type FormEvent, type ReactNode, useRef, useState } from "react";
import { DayField } from "../kitchen/fields/DayField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";
import { type DateKind, DateKindField } from "./DateKindField.tsx";
import { InDanger } from "./InDanger.tsx";

interface PackDateProps {
  /** Lots of one kind, as they came home together; they get one date. */
  readonly lots: readonly LotState[];
  /** What they are called. */
  readonly label: string;
}

/** The date that stands on packs at hand: told, changed, or that there is none; and what it puts in danger. */
export function PackDate({ lots, label }: PackDateProps): ReactNode {
  const { further, formats } = useFurther("stores");
  const { view } = useKitchen();
  const mayTell = useMayWrite("labelled");
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const [lot] = lots;
  if (lot === undefined) return null;
  const { packDate } = further;
  const { useBy, bestBefore } = lot;
  const told = [
    ...(useBy === undefined ? [] : [packDate.mustGo(formats.dayFrom(view.day, useBy))]),
    ...(bestBefore === undefined ? [] : [packDate.atItsBest(formats.dayFrom(view.day, bestBefore))]),
  ].join(" ");
  const close = (): void => {
    setOpen(false);
    button.current?.focus();
  };
  return (
    <div className="stack tight">
      {mayTell ? (
        <div>
          <button
            ref={button}
            type="button"
            className="button quiet"
            aria-expanded={isOpen}
            onClick={() => setOpen(!isOpen)}
          >
            {told === "" ? packDate.tell : told}
            <span className="unseen"> {packDate.of(label)}</span>
          </button>
        </div>
      ) : (
        told !== "" && <p className="small soft">{told}</p>
      )}
      {isOpen && <DateForm lots={lots} lot={lot} onDone={close} />}
      <InDanger lots={lots} />
    </div>
  );
}

interface DateFormProps extends Pick<PackDateProps, "lots"> {
  /** One of them. */
  readonly lot: LotState;
  readonly onDone: () => void;
}

function DateForm({ lots, lot, onDone }: DateFormProps): ReactNode {
  const { further } = useFurther("stores");
  const { session, view } = useKitchen();
  const [kind, setKind] = useState<DateKind>(
    lot.useBy !== undefined || (lot.bestBefore === undefined && lot.place !== "dry-store") ? "useBy" : "bestBefore",
  );
  const [date, setDate] = useState<CivilDate | undefined>(lot[kind]);
  const { packDate } = further;
  const write = (label: { readonly useBy?: CivilDate; readonly bestBefore?: CivilDate }): void => {
    void session.write((pen) => lots.map(({ id }) => pen.write({ kind: "labelled", on: view.day, lot: id, ...label })));
    onDone();
  };
  const note = (event: FormEvent): void => {
    event.preventDefault();
    if (date !== undefined) write({ [kind]: date });
  };
  return (
    <form className="stack tight" onSubmit={note}>
      <div className="fields two">
        <DayField label={packDate.date} value={date} onChange={setDate} onClear={() => setDate(undefined)} />
        <DateKindField value={kind} onChange={setKind} />
      </div>
      <div className="row">
        <button type="submit" className="button main" disabled={date === undefined}>
          {packDate.note}
        </button>
        {(lot.useBy !== undefined || lot.bestBefore !== undefined) && (
          <button type="button" className="button" onClick={() => write({})}>
            {packDate.none}
          </button>
        )}
        <button type="button" className="button" onClick={onDone}>
          {further.cancel}
        </button>
      </div>
    </form>
  );
}
