import type { PricedLine } from "@halfloaf/reading";
import { type ReactNode, useState } from "react";
import { Allowed } from "../../sharing/Allowed.tsx";
import { RoleNote } from "../../sharing/RoleNote.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { LineOfPrices } from "./LineOfPrices.tsx";
import type { Settling, Standing } from "./useSettling.ts";

interface PricedLinesProps {
  readonly lines: readonly PricedLine[];
  readonly settling: Settling;
  /** The shop whose packs can be meant by a line; undefined where it is not known yet. */
  readonly shopOf: (line: PricedLine) => string | undefined;
  readonly onMatch: (line: PricedLine, pack: string) => void;
  /** Why nothing of it can be kept as it stands. */
  readonly refused?: string | undefined;
}

type Group = "all" | "noted" | "open" | "idle";

/** So many lines are shown before somebody asks for more. */
const STEP = 60;

const GROUP_OF: Readonly<Record<Standing, Group>> = {
  noted: "noted",
  new: "noted",
  open: "open",
  same: "idle",
  idle: "idle",
  "left-out": "idle",
};

/** The lines of a receipt or list, each with what becomes of it, and what keeps them. */
export function PricedLines({ lines, settling, shopOf, onMatch, refused }: PricedLinesProps): ReactNode {
  const { further } = useFurther("readPrices");
  const [group, setGroup] = useState<Group>("all");
  const [most, setMost] = useState(STEP);
  // A line stays in the group that was asked for while it is settled, so that nothing moves under the hand.
  const [asked, setAsked] = useState<ReadonlySet<number>>(new Set());
  const { priced: words } = further;
  const groupOf = (line: PricedLine): Group => GROUP_OF[settling.standingOf(line)];
  const count = (wanted: Group): number => lines.filter((line) => groupOf(line) === wanted).length;
  const found = group === "all" ? lines : lines.filter(({ line }) => asked.has(line));
  const { counts, kept } = settling;
  const show = (wanted: Group): void => {
    setGroup(wanted);
    setAsked(new Set(lines.filter((line) => groupOf(line) === wanted).map(({ line }) => line)));
    setMost(STEP);
  };
  return (
    <>
      <p role="status">{words.counts(counts.prices, counts.packs, count("open"), count("idle"))}.</p>
      {lines.length > 8 && (
        <fieldset className="row choice">
          <legend>{words.show}</legend>
          {(["all", "open", "noted", "idle"] as const).map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === group}
              onClick={() => show(each)}
            >
              {words.shown[each]}
            </button>
          ))}
        </fieldset>
      )}
      {found.length === 0 && <p className="soft">{words.none}</p>}
      <ul className="lines">
        {found.slice(0, most).map((line) => (
          <li key={line.line}>
            <LineOfPrices line={line} settling={settling} shop={shopOf(line)} onMatch={onMatch} />
          </li>
        ))}
      </ul>
      {found.length > most && (
        <div>
          <button type="button" className="button" onClick={() => setMost(most + STEP)}>
            {words.more(Math.min(STEP, found.length - most))}
          </button>
        </div>
      )}
      <p className="small soft">{words.remembered}</p>
      {refused !== undefined && <p className="caution">{refused}</p>}
      <Allowed to="price-seen" otherwise={<RoleNote />}>
        <div>
          <button
            type="button"
            className="button main"
            disabled={refused !== undefined || counts.prices + counts.packs + counts.matches === 0}
            onClick={settling.keep}
          >
            {words.keep(counts.prices, counts.packs, counts.matches)}
          </button>
        </div>
      </Allowed>
      <p role="status">
        {kept !== undefined && `${words.kept(kept.prices, kept.packs, kept.matches)}.`}
        {kept?.onlyPrices === true && ` ${words.notRemembered}`}
      </p>
    </>
  );
}
