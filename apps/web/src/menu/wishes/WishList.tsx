import type { ReactNode } from "react";
import { EditedList } from "../../kitchen/EditedList.tsx";
import { useKitchen } from "../../kitchen/KitchenProvider.tsx";
import { useNames } from "../../kitchen/useNames.ts";
import { useFurther } from "../../words/useFurther.ts";
import { tellMatter, tellMeant, tellWhen } from "./tellWish.ts";
import { tellWishIssue } from "./tellWishIssue.ts";
import { FRESH, fromWishDraft, toWishDraft } from "./WishDraft.ts";
import { WishFields } from "./WishFields.tsx";

/** What is wished for in every week: seen, changed, taken away. */
export default function WishList(): ReactNode {
  // Those of Kitchen are for the form: what comes later would put away what is typed.
  const { further, formats, words } = useFurther("wishes", "kitchen");
  const { view } = useKitchen();
  const names = useNames();
  const { wishes, currency } = view.edited;
  const telling = { further, formats, names, sittings: words.sittings, currency };
  return (
    <EditedList
      items={wishes}
      put={(kitchen, next) => ({ ...kitchen, wishes: next })}
      tell={(wish) => ({
        what: tellMeant(wish.what, telling),
        when: tellWhen(wish, telling),
        besides: tellMatter(wish, telling),
      })}
      tellIssue={(issue) => tellWishIssue(issue, further)}
      words={further.wishes}
      fresh={FRESH}
      toDraft={toWishDraft}
      fromDraft={fromWishDraft}
      fields={(draft, onChange) => <WishFields wish={draft} onChange={onChange} />}
    />
  );
}
