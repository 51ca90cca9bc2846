import { type ReactNode, useId, useState } from "react";
import { useWords } from "../words/WordsContext.tsx";

const DAY = 24 * 60;

/** When to begin, for a cooking that is to be ready at a time of the day. */
export function BeginAt({ serveMinutes }: { readonly serveMinutes: number }): ReactNode {
  const { words, formats } = useWords();
  const field = useId();
  const [time, setTime] = useState("");
  const [hours, minutes] = time.split(":").map(Number);
  return (
    <div className="row begin-at">
      <label className="field" htmlFor={field}>
        {words.work.readyBy}
        <input id={field} type="time" value={time} onChange={(event) => setTime(event.target.value)} />
      </label>
      <output htmlFor={field} aria-live="polite">
        {hours !== undefined &&
          minutes !== undefined &&
          words.work.beginAt(formats.clock((hours * 60 + minutes - Math.ceil(serveMinutes) + DAY) % DAY))}
      </output>
    </div>
  );
}
