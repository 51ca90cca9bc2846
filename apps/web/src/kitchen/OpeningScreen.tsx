import type { ReactNode } from "react";
import { Loading } from "../loading/Loading.tsx";
import { lazily } from "../loading/lazily.ts";
import { useWords } from "../words/WordsContext.tsx";
import type { Opening } from "./KitchenProvider.tsx";

const FirstUse = lazily(() => import("../first/FirstUse.tsx"));

/** What is shown while no kitchen is open: that one is being opened, why it can't be, or how to make one. */
export function OpeningScreen({ opening }: { readonly opening: Exclude<Opening, { kind: "open" }> }): ReactNode {
  const { words } = useWords();
  if (opening.kind === "opening") return <Loading />;
  if (opening.kind === "none") return <FirstUse />;
  const { reason, detail } = opening.fault;
  const [title, remedy] =
    reason === "missing"
      ? [words.opening.missing, words.opening.missingRemedy]
      : reason === "newer"
        ? [words.opening.newer, words.opening.newerRemedy]
        : [words.opening.unopenable, words.opening.unopenableRemedy];
  return (
    <div className="stack" role="alert">
      <h1>{title}</h1>
      <p>{remedy}</p>
      <p className="soft small">{detail}</p>
      {reason === "missing" && <FirstUse />}
    </div>
  );
}
