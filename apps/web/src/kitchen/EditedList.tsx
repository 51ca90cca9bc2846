import type { EditedKitchen } from "halfloaf/kitchen/record";
import type { Issue } from "halfloaf/quantity";
import { type ReactNode, useState } from "react";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { Undo } from "../today/Undo.tsx";
import { useFurther } from "../words/useFurther.ts";
import { PartForm } from "./PartForm.tsx";
import { useSaving } from "./useSaving.ts";

interface EditedListProps<Item, Draft> {
  readonly items: readonly Item[];
  /** The kitchen with another list in the place of `items`; what stands in it may still be faulty. */
  readonly put: (kitchen: EditedKitchen, items: readonly unknown[]) => unknown;
  /** What an item is, when it holds (the two tell it from others), and what else is to be said of it. */
  readonly tell: (item: Item) => { readonly what: string; readonly when: string; readonly besides?: string };
  /** Says an issue better than in general; undefined where it does not know it. */
  readonly tellIssue: (issue: Issue) => string | undefined;
  readonly words: { readonly note: string; readonly empty: string; readonly add: string };
  /** An item that nothing is said of yet. */
  readonly fresh: Draft;
  readonly toDraft: (item: Item) => Draft;
  readonly fromDraft: (draft: Draft) => unknown;
  readonly fields: (draft: Draft, onChange: (draft: Draft) => void) => ReactNode;
}

/** Things of the kitchen that have no name but their place: seen, added, changed, taken away. */
export function EditedList<Item, Draft>(props: EditedListProps<Item, Draft>): ReactNode {
  const { items, put, tell, tellIssue, words, fresh, toDraft, fromDraft, fields } = props;
  const { further } = useFurther();
  const [open, setOpen] = useState<{ readonly at: number; readonly draft: Draft }>();
  const { issues, save } = useSaving();
  const keep = (next: readonly unknown[]): void => {
    if (save((kitchen) => put(kitchen, next))) setOpen(undefined);
  };
  if (open !== undefined)
    return (
      <PartForm
        issues={issues}
        tell={tellIssue}
        onSave={() => keep([...items.slice(0, open.at), fromDraft(open.draft), ...items.slice(open.at + 1)])}
        onCancel={() => setOpen(undefined)}
        onRemove={open.at < items.length ? () => keep(items.toSpliced(open.at, 1)) : undefined}
      >
        {fields(open.draft, (draft) => setOpen({ ...open, draft }))}
      </PartForm>
    );
  return (
    <>
      <p className="small soft">{words.note}</p>
      {items.length === 0 ? (
        <p>{words.empty}</p>
      ) : (
        <ul className="lines">
          {items.map((item, at) => {
            const { what, when, besides } = tell(item);
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: they have no name but their place.
              <li key={at} className="line-with-ways">
                <div>
                  {what}
                  <div className="small soft">{besides === undefined ? when : `${when}; ${besides}`}</div>
                </div>
                <Allowed to="edited">
                  <button type="button" className="button" onClick={() => setOpen({ at, draft: toDraft(item) })}>
                    {further.edit}
                    <span className="unseen">
                      {" "}
                      {what} {when}
                    </span>
                  </button>
                </Allowed>
              </li>
            );
          })}
        </ul>
      )}
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div className="row spread">
          <button type="button" className="button" onClick={() => setOpen({ at: items.length, draft: fresh })}>
            {words.add}
          </button>
          <Undo />
        </div>
      </Allowed>
    </>
  );
}
