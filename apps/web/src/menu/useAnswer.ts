import { proxy, type Remote } from "comlink";
import { useRef, useState } from "react";
import type { Reasoner } from "./reasoning/Reasoner.ts";
import { useReasoner } from "./reasoning/useReasoner.ts";

/** A question to the reasoner, and how far its answer is. */
export type Answering<Answer> =
  | { readonly kind: "none" }
  /** With a first answer where there is one already. */
  | { readonly kind: "thinking"; readonly answer?: Answer }
  /** Undefined where the kitchen has become another than the one asked about. */
  | { readonly kind: "answered"; readonly answer: Answer | undefined }
  | { readonly kind: "failed"; readonly reason: string };

/** What is asked; an answer that is told meanwhile is shown until there is a better one. */
type Question<Answer> = (
  reasoner: Remote<Reasoner>,
  tell: (answer: Answer) => Promise<void>,
) => Promise<Answer | undefined>;

/**
 * Asks the reasoner one thing at a time, `told` being the best answer so far. A later question, or `stop`, ends the one before;
 * an answer that is known by then is kept by `stop`.
 */
export function useAnswer<Answer>(): {
  readonly answering: Answering<Answer>;
  readonly told: Answer | undefined;
  readonly ask: (question: Question<Answer>) => void;
  readonly stop: () => void;
} {
  const [answering, setAnswering] = useState<Answering<Answer>>({ kind: "none" });
  const reasoner = useReasoner();
  const latest = useRef(0);
  const told = answering.kind === "thinking" || answering.kind === "answered" ? answering.answer : undefined;
  const ask = (question: Question<Answer>): void => {
    if (answering.kind === "thinking") reasoner.stop();
    const own = ++latest.current;
    setAnswering({ kind: "thinking" });
    const tell = async (answer: Answer): Promise<void> => {
      if (own === latest.current) setAnswering({ kind: "thinking", answer });
    };
    question(reasoner.ask(), proxy(tell)).then(
      (answer) => own === latest.current && setAnswering({ kind: "answered", answer }),
      (error: unknown) => own === latest.current && setAnswering({ kind: "failed", reason: String(error) }),
    );
  };
  const stop = (): void => {
    latest.current++;
    reasoner.stop();
    setAnswering(told === undefined ? { kind: "none" } : { kind: "answered", answer: told });
  };
  return { answering, told, ask, stop };
}
