import type { AccountLine, Stretch } from "halfloaf/kitchen/record";
import { niceStep } from "halfloaf/sheet";
import { type ReactNode, useId } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useFurther } from "../words/useFurther.ts";
import { BARS, type Bar, barOf } from "./accountBars.ts";
import { nameOfLine } from "./nameOfLine.ts";

const [WIDTH, HEIGHT] = [360, 210];
const FRAME = { left: 52, right: 4, top: 10, bottom: 26 } as const;
const GAP = 8;

interface AccountsPlotProps {
  readonly lines: readonly AccountLine[];
  readonly chosen: string;
  readonly stretch: Stretch;
}

/** Four bars for each stretch of days, each with a pattern of its own. */
export function AccountsPlot({ lines, chosen, stretch }: AccountsPlotProps): ReactNode {
  const { further, formats } = useFurther("accounts");
  const { view } = useKitchen();
  const id = useId();
  const most = Math.max(1, ...lines.flatMap((line) => BARS.map((bar) => barOf(line, bar) ?? 0)));
  const step = niceStep(most / 4);
  const top = Math.ceil(most / step) * step;
  const width = (WIDTH - FRAME.left - FRAME.right) / lines.length;
  const bar = (width - GAP) / BARS.length;
  const floor = HEIGHT - FRAME.bottom;
  const heightOf = (minor: number): number => (minor / top) * (floor - FRAME.top);
  const ticks = Array.from({ length: Math.round(top / step) + 1 }, (_, at) => at * step);
  return (
    <figure className="plot-figure">
      <svg
        className="plot"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={`${further.accounts.picture}. ${further.accounts.pictureSays}`}
      >
        <Patterns id={id} />
        {ticks.map((minor) => (
          <g key={minor}>
            <path className="plot-line" d={`M${FRAME.left} ${floor - heightOf(minor)}H${WIDTH}`} />
            <text className="plot-text" x={FRAME.left - 6} y={floor - heightOf(minor) + 4} textAnchor="end">
              {formats.money(minor, view.kitchen.currency)}
            </text>
          </g>
        ))}
        {lines.map((line, at) => {
          const left = FRAME.left + at * width + GAP / 2;
          return (
            <g key={line.name}>
              {BARS.map((each, place) => {
                const height = heightOf(barOf(line, each) ?? 0);
                const box = { x: left + place * bar, y: floor - height, width: bar - 1, height };
                return height > 0 && <rect key={each} className={`bar ${each}`} {...box} fill={`url(#${id}${each})`} />;
              })}
              <text
                className={line.name === chosen ? "plot-text chosen" : "plot-text"}
                x={left + (width - GAP) / 2}
                y={HEIGHT - 8}
                textAnchor="middle"
              >
                {nameOfLine(line, stretch, formats)}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption className="row small">
        {BARS.map((each) => (
          <span key={each} className="legend-line">
            <svg className="legend" viewBox="0 0 36 14" aria-hidden="true">
              <rect className={`bar ${each}`} x="1" y="1" width="34" height="12" fill={`url(#${id}${each})`} />
            </svg>
            {further.accounts[each]}
          </span>
        ))}
      </figcaption>
    </figure>
  );
}

/** Empty, full, strokes, crosses: told apart without colour. */
function Patterns({ id }: { readonly id: string }): ReactNode {
  const marks: Record<Bar, ReactNode> = {
    planned: null,
    spent: <rect className="ink" width="6" height="6" />,
    eaten: <path className="ink-line" d="M0 6L6 0M-1 1L1 -1M5 7L7 5" />,
    wasted: <path className="ink-line" d="M0 0L6 6M0 6L6 0" />,
  };
  return (
    <defs>
      {BARS.map((bar) => (
        <pattern key={bar} id={`${id}${bar}`} width="6" height="6" patternUnits="userSpaceOnUse">
          <g className={`bar-marks ${bar}`}>{marks[bar]}</g>
        </pattern>
      ))}
    </defs>
  );
}
