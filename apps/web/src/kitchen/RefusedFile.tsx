import { parseBackup } from "@halfloaf/keep";
import { type FaultWords, tellIssue } from "@halfloaf/words/faults";
import { findKitchenFaults, type Tables } from "halfloaf/kitchen";
import type { Issue } from "halfloaf/quantity";
import { type ReactNode, use } from "react";
import { loadSurely } from "../loading/loadSurely.ts";
import type { Language } from "../words/languages.ts";
import { useFurther } from "../words/useFurther.ts";
import "./fields/fields.css";
import { LongList } from "./LongList.tsx";
import { loadTables } from "./loadStarter.ts";

const WORDS: Readonly<Record<Language, () => Promise<FaultWords>>> = {
  en: () => import("@halfloaf/words/en/faults").then(({ FAULT_WORDS_EN }) => FAULT_WORDS_EN),
  de: () => import("@halfloaf/words/de/faults").then(({ FAULT_WORDS_DE }) => FAULT_WORDS_DE),
};
const loading = new Map<Language, Promise<FaultWords>>();

function loadWords(language: Language): Promise<FaultWords> {
  const words = loading.get(language) ?? loadSurely(WORDS[language]);
  loading.set(language, words);
  return words;
}

/** Why a kitchen's file was not taken: all that is wrong in it, each with the thing, its value and the remedy. */
export default function RefusedFile({ content }: { readonly content: unknown }): ReactNode {
  const { further, language } = useFurther();
  const words = use(loadWords(language));
  const issues = findFaults(content, use(loadTables()));
  if (issues.length === 0) return null;
  return (
    <section className="issues stack tight" aria-label={further.refused.title(issues.length)}>
      <p>{further.refused.title(issues.length)}</p>
      <LongList className="lines close">
        {issues.map((issue) => {
          const { sentence, remedy } = tellIssue(issue, content, words);
          return (
            <li key={JSON.stringify(issue)}>
              {sentence}
              <div className="small soft">{remedy}</div>
            </li>
          );
        })}
      </LongList>
    </section>
  );
}

/** Empty for what is no file of a kitchen at all. */
function findFaults(content: unknown, starter: Tables): readonly Issue[] {
  if (typeof content !== "object" || content === null || !("format" in content)) return [];
  const read = parseBackup(content, starter.dishes);
  const isStrange = !read.ok && read.issues.some(({ code }) => code === "version-newer" || code === "format-unknown");
  if (isStrange) return read.issues.filter(({ code }) => code === "version-newer");
  if (content.format === "halfloaf-kitchen") return findKitchenFaults(content, starter);
  return read.ok ? [] : read.issues;
}
