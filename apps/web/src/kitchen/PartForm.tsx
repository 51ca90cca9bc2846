import type { Issue } from "halfloaf/quantity";
import type { ReactNode } from "react";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useMayWrite } from "../sharing/useMayWrite.ts";
import { useFurther } from "../words/useFurther.ts";
import { Issues } from "./Issues.tsx";

interface PartFormProps {
  readonly issues: readonly Issue[];
  /** Says an issue better than in general; undefined where it does not know it. */
  readonly tell?: (issue: Issue) => string | undefined;
  /** Says that it was saved, where the form stays open after it. */
  readonly isSaved?: boolean;
  readonly onSave: () => void;
  /** Absent where the form is always open. */
  readonly onCancel?: (() => void) | undefined;
  /** Absent where the thing is new or may not be removed. */
  readonly onRemove?: (() => void) | undefined;
  /** What removing it takes along, as the words of the button; absent where nothing else goes. */
  readonly removal?: string | undefined;
  /** The fields. */
  readonly children: ReactNode;
}

/** A form for one thing of the kitchen: its fields, what is wrong with them, and the ways out. */
export function PartForm(props: PartFormProps): ReactNode {
  const { issues, tell, isSaved = false, onSave, onCancel, onRemove, children } = props;
  const { further } = useFurther();
  const mayEdit = useMayWrite("edited");
  return (
    <form
      className="stack tight"
      onSubmit={(event) => {
        event.preventDefault();
        if (mayEdit) onSave();
      }}
    >
      <fieldset className="bare stack tight" disabled={!mayEdit}>
        {children}
      </fieldset>
      <Issues issues={issues} isSaved={isSaved} {...(tell && { tell })} />
      {!mayEdit && <RoleNote />}
      <div className="row">
        {mayEdit && (
          <button type="submit" className="button main">
            {further.save}
          </button>
        )}
        {onCancel !== undefined && (
          <button type="button" className="button" onClick={onCancel}>
            {further.cancel}
          </button>
        )}
        {mayEdit && onRemove !== undefined && (
          <button type="button" className="button" onClick={onRemove}>
            {props.removal ?? further.remove}
          </button>
        )}
      </div>
    </form>
  );
}
