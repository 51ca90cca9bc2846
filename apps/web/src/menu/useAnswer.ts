import type { Remote } from "comlink";
import { useRef, useState } from "react";
import type { Reasoner } from "./reasoning/Reasoner.ts";
import { useReasoner } from "./reasoning/useReasoner.ts";

/** A question to the reasoner, and how far its answer is. */
export type Answering<Answer> =
  | { readonly kind: "none" }
  | { readonly kind: "thinking" }
  /** Undefined where the kitchen has become another than the one asked about. */
  | { readonly kind: "answered"; readonly answer: Answer | undefined }
  | { readonly kind: "failed"; readonly reason: string };

/** Asks the reasoner one thing at a time; a later question, or `stop`, ends the one before. */
export function useAnswer<Answer>(): {
  readonly answering: Answering<Answer>;
  readonly ask: (question: (reasoner: Remote<Reasoner>) => Promise<Answer | undefined>) => void;
  readonly stop: () => void;
} {
  const [answering, setAnswering] = useState<Answering<Answer>>({ kind: "none" });
  const reasoner = useReasoner();
  const latest = useRef(0);
  const ask = (question: (reasoner: Remote<Reasoner>) => Promise<Answer | undefined>): void => {
    if (answering.kind === "thinking") reasoner.stop();
    const own = ++latest.current;
    setAnswering({ kind: "thinking" });
    question(reasoner.ask()).then(
      (answer) => own === latest.current && setAnswering({ kind: "answered", answer }),
      (error: unknown) => own === latest.current && setAnswering({ kind: "failed", reason: String(error) }),
    );
  };
  const stop = (): void => {
    latest.current++;
    reasoner.stop();
    setAnswering({ kind: "none" });
  };
  return { answering, ask, stop };
}
