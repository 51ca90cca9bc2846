import type { TimelineRow, WorkSheet } from "halfloaf/kitchen";
import { type ReactNode, useId } from "react";
import { useWords } from "../words/WordsContext.tsx";

const LEFT = 78;
const ROW = 34;
const MINUTE = 9;
const HEAD = 22;

/** Hands, rings, oven and what waits, as bars along the minutes, with a line where it is now. */
export function Timeline({ sheet, now }: { readonly sheet: WorkSheet; readonly now: number | undefined }): ReactNode {
  const { words } = useWords();
  const id = useId();
  const width = LEFT + sheet.serveMinutes * MINUTE + 16;
  const height = HEAD + sheet.rows.length * ROW + 6;
  const x = (minutes: number): number => LEFT + minutes * MINUTE;
  const ticks = Array.from({ length: Math.floor(sheet.serveMinutes / 5) + 1 }, (_, at) => at * 5);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard.
    <section className="timeline" tabIndex={0} aria-label={words.work.timeline}>
      <svg
        width={width}
        height={height}
        role="img"
        aria-label={words.work.timelineSays(sheet.serveMinutes, sheet.rows.length)}
      >
        <defs>
          <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse">
            <path className="timeline-hatch" d="M0 6L6 0" />
          </pattern>
        </defs>
        {ticks.map((minutes) => (
          <g key={minutes}>
            <line className="timeline-tick" x1={x(minutes)} x2={x(minutes)} y1={HEAD} y2={height} />
            <text className="timeline-minute" x={x(minutes)} y={15}>
              {minutes}
            </text>
          </g>
        ))}
        {sheet.rows.map((row, at) => (
          <Row key={`${row.kind} ${row.number ?? ""}`} row={row} y={HEAD + at * ROW} x={x} hatch={`url(#${id})`} />
        ))}
        {now !== undefined && now <= sheet.serveMinutes && (
          <line className="timeline-now" x1={x(now)} x2={x(now)} y1={4} y2={height} />
        )}
      </svg>
    </section>
  );
}

interface RowProps {
  readonly row: TimelineRow;
  readonly y: number;
  readonly x: (minutes: number) => number;
  readonly hatch: string;
}

function Row({ row, y, x, hatch }: RowProps): ReactNode {
  const { words } = useWords();
  return (
    <g>
      <text className="timeline-row" x={0} y={y + 21}>
        {words.work.rows[row.kind]}
        {row.number !== undefined && ` ${row.number}`}
      </text>
      {row.bars.map((bar) => (
        <g key={`${bar.startMinutes} ${bar.label}`} className={`bar ${bar.fill}`}>
          <rect
            x={x(bar.startMinutes)}
            y={y + 5}
            width={Math.max(3, x(bar.endMinutes) - x(bar.startMinutes) - 1)}
            height={ROW - 10}
            rx={4}
          />
          {bar.fill !== "full" && bar.fill !== "waiting" && (
            <rect
              className="bar-hatch"
              x={x(bar.startMinutes)}
              y={y + 5}
              width={Math.max(3, x(bar.endMinutes) - x(bar.startMinutes) - 1)}
              height={ROW - 10}
              rx={4}
              fill={hatch}
            />
          )}
          <title>{bar.label}</title>
        </g>
      ))}
    </g>
  );
}
