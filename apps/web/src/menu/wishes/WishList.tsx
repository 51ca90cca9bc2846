import type { Wish } from "halfloaf/kitchen";
import { type ReactNode, useState } from "react";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { PartForm } from "../../kitchen/PartForm.tsx";
import { useNames } from "../../kitchen/useNames.ts";
import { useSaving } from "../../kitchen/useSaving.ts";
import { Allowed } from "../../sharing/Allowed.tsx";
import { RoleNote } from "../../sharing/RoleNote.tsx";
import { Undo } from "../../today/Undo.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { tellMatter, tellMeant, tellWhen } from "./tellWish.ts";
import { tellWishIssue } from "./tellWishIssue.ts";
import { FRESH, fromWishDraft, toWishDraft, type WishDraft } from "./WishDraft.ts";
import { WishFields } from "./WishFields.tsx";

/** What is wished for in every week: seen, changed, taken away. */
export default function WishList(): ReactNode {
  // Those of Kitchen are for the form: what comes later would put away what is typed.
  const { further, formats, words } = useFurther("wishes", "kitchen");
  const { view } = useKitchen();
  const names = useNames();
  const { wishes, currency } = view.edited;
  const [open, setOpen] = useState<{ readonly at: number; readonly draft: WishDraft }>();
  const { issues, save } = useSaving();
  const telling = { further, formats, names, sittings: words.sittings, currency };
  const keep = (next: readonly unknown[]): void => {
    if (save((kitchen) => ({ ...kitchen, wishes: next }))) setOpen(undefined);
  };
  if (open !== undefined)
    return (
      <PartForm
        issues={issues}
        tell={(issue) => tellWishIssue(issue, further)}
        onSave={() => keep(wishes.toSpliced(open.at, 1, fromWishDraft(open.draft) as Wish))}
        onCancel={() => setOpen(undefined)}
        onRemove={open.at < wishes.length ? () => keep(wishes.toSpliced(open.at, 1)) : undefined}
      >
        <WishFields wish={open.draft} onChange={(draft) => setOpen({ ...open, draft })} />
      </PartForm>
    );
  return (
    <>
      <p className="small soft">{further.wishes.note}</p>
      {wishes.length === 0 ? (
        <p>{further.wishes.empty}</p>
      ) : (
        <ul className="lines">
          {wishes.map((wish, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: wishes have no name but their place.
            <li key={at} className="line-with-ways">
              <div>
                {tellMeant(wish.what, telling)}
                <div className="small soft">
                  {tellWhen(wish, telling)}; {tellMatter(wish, telling)}
                </div>
              </div>
              <Allowed to="edited">
                <button type="button" className="button" onClick={() => setOpen({ at, draft: toWishDraft(wish) })}>
                  {further.edit}
                  <span className="unseen">
                    {" "}
                    {tellMeant(wish.what, telling)} {tellWhen(wish, telling)}
                  </span>
                </button>
              </Allowed>
            </li>
          ))}
        </ul>
      )}
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div className="row spread">
          <button type="button" className="button" onClick={() => setOpen({ at: wishes.length, draft: FRESH })}>
            {further.wishes.add}
          </button>
          <Undo />
        </div>
      </Allowed>
    </>
  );
}
