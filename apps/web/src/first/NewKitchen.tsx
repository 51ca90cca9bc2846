import { Eater, Kit } from "halfloaf/kitchen";
import { type Issue, type Parsed, parseWith } from "halfloaf/quantity";
import { type ReactNode, use, useEffect, useRef, useState } from "react";
import { useLocation } from "wouter";
import { Issues } from "../kitchen/Issues.tsx";
import { useMakeKitchen } from "../kitchen/KitchenProvider.tsx";
import { loadStarter, type Starter } from "../kitchen/loadStarter.ts";
import { today } from "../kitchen/today.ts";
import { useFurther } from "../words/useFurther.ts";
import { type Answers, usualAnswers } from "./Answers.ts";
import "../kitchen/fields/fields.css";
import { KitPage } from "./KitPage.tsx";
import { MoneyPage } from "./MoneyPage.tsx";
import { newKitchen } from "./newKitchen.ts";
import { TimePage } from "./TimePage.tsx";
import { WhoPage } from "./WhoPage.tsx";

const PAGES = ["who", "kit", "money", "time"] as const;

/** Four questions, one a page; then the kitchen is made and its first week planned. */
export default function NewKitchen({ onLeave }: { readonly onLeave: () => void }): ReactNode {
  const { further, language } = useFurther("first");
  const { first } = further;
  const starter = use(loadStarter(language));
  const [answers, setAnswers] = useState(() => {
    const usual = starter.shops.cupboard.filter((each) => each.usual).map(({ food }) => food);
    return usualAnswers(navigator.language, first.person(1), usual);
  });
  const [at, setAt] = useState(0);
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const { making, make } = useMaking(starter, setIssues);
  const title = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page begins at its title.
  useEffect(() => title.current?.focus(), [at]);
  const page = PAGES[at] ?? "who";
  const isLast = at === PAGES.length - 1;
  const goOn = (): void => {
    const found = findIssues(page, answers);
    setIssues(found);
    if (found.length > 0) return;
    if (isLast) void make(answers);
    else setAt(at + 1);
  };
  const goBack = (): void => {
    setIssues([]);
    if (at === 0) onLeave();
    else setAt(at - 1);
  };
  const shared = { answers, onChange: setAnswers };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        goOn();
      }}
    >
      <div>
        <p className="small soft">{first.step(at + 1, PAGES.length)}</p>
        <h1 ref={title} tabIndex={-1}>
          {first.steps[at]}
        </h1>
      </div>
      {page === "who" && <WhoPage {...shared} />}
      {page === "kit" && <KitPage {...shared} />}
      {page === "money" && <MoneyPage {...shared} starter={starter} />}
      {page === "time" && <TimePage {...shared} />}
      <Issues issues={issues} />
      <div className="row spread foot-stays">
        <button type="button" className="button" onClick={goBack}>
          {further.back}
        </button>
        <button type="submit" className="button main" disabled={making === "making"}>
          {isLast ? first.done : further.next}
        </button>
      </div>
      <p role="status">{making === "making" ? first.making : making === "failed" ? first.failed : ""}</p>
    </form>
  );
}

/** Makes the kitchen of the answers, and goes to its menu to have the days planned. */
function useMaking(
  starter: Starter,
  onIssues: (issues: readonly Issue[]) => void,
): { readonly making: "no" | "making" | "failed"; readonly make: (answers: Answers) => Promise<void> } {
  const { first } = useFurther("first").further;
  const makeKitchen = useMakeKitchen();
  const [, navigate] = useLocation();
  const [making, setMaking] = useState<"no" | "making" | "failed">("no");
  const make = async (answers: Answers): Promise<void> => {
    const beginning = { name: first.myKitchen, shopNames: first.shops, day: today() };
    const made = newKitchen(answers, starter.shops, starter.tables, beginning);
    if (!made.ok) return onIssues(made.issues);
    setMaking("making");
    const isMade = await makeKitchen(made.value).catch(() => false);
    setMaking(isMade ? "no" : "failed");
    if (isMade) navigate("/menu", { state: { plan: true } });
  };
  return { making, make };
}

/** All that keeps a page from being left. */
function findIssues(page: (typeof PAGES)[number], { eaters, kit, budgetMinor, sittings }: Answers): Issue[] {
  if (page === "who") return eaters.flatMap((eater, at) => issuesOf(parseWith(Eater, eater), ["eaters", at]));
  if (page === "kit") return issuesOf(parseWith(Kit, kit), ["kit"]);
  if (page === "money")
    return budgetMinor === undefined || budgetMinor >= 0
      ? []
      : [{ code: "number", path: ["limits", "budgetMinor"], expected: ">=0", received: "NaN" }];
  const isAnyHere = Object.values(sittings).some(({ isHere }) => isHere);
  return isAnyHere ? [] : [{ code: "min_length", path: ["sittings"], expected: ">=1", received: "0" }];
}

function issuesOf(read: Parsed<unknown>, path: Issue["path"]): Issue[] {
  return read.ok ? [] : read.issues.map((issue) => ({ ...issue, path: [...path, ...issue.path] }));
}
