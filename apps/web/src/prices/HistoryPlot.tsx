import type { PriceHistory } from "halfloaf/kitchen/record";
import { addDays, type CivilDate, daysBetween } from "halfloaf/quantity";
import { niceStep } from "halfloaf/sheet";
import type { ReactNode } from "react";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";

const [WIDTH, HEIGHT] = [360, 210];
const FRAME = { left: 52, right: 10, top: 10, bottom: 26 } as const;
/** Lines are told apart by dashes and marks, not by colour alone. */
const DASHES = ["", "7 4", "2 4", "10 3 2 3", "5 2"];

interface HistoryPlotProps {
  readonly histories: readonly PriceHistory[];
  readonly food: string;
  readonly until: CivilDate;
}

/** Unit prices over time: a mark for each look, a step that holds until the next. */
export function HistoryPlot({ histories, food, until }: HistoryPlotProps): ReactNode {
  const { further, formats } = useFurther("prices");
  const { view } = useKitchen();
  const names = useNames();
  const looks = histories.flatMap(({ points }) =>
    points.flatMap(({ on, perKgMinor }) => (perKgMinor === undefined ? [] : [{ on, perKgMinor }])),
  );
  if (looks.length === 0) return null;
  const first = looks.map(({ on }) => on).sort()[0] as CivilDate;
  const from = addDays(first, -Math.max(3, Math.round(daysBetween(first, until) * 0.05)));
  const days = daysBetween(from, until);
  const dearest = Math.max(...looks.map(({ perKgMinor }) => perKgMinor));
  const step = niceStep(dearest / 4);
  const top = Math.ceil(dearest / step) * step;
  const xOf = (on: CivilDate): number =>
    FRAME.left + (daysBetween(from, on) / days) * (WIDTH - FRAME.left - FRAME.right);
  const yOf = (perKg: number): number => HEIGHT - FRAME.bottom - (perKg / top) * (HEIGHT - FRAME.top - FRAME.bottom);
  const ticks = Array.from({ length: Math.round(top / step) + 1 }, (_, at) => at * step);
  return (
    <figure className="plot-figure">
      <svg
        className="plot"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={further.prices.historySays(food, looks.length)}
      >
        {ticks.map((perKg) => (
          <g key={perKg}>
            <path className="plot-line" d={`M${FRAME.left} ${yOf(perKg)}H${WIDTH - FRAME.right}`} />
            <text className="plot-text" x={FRAME.left - 6} y={yOf(perKg) + 4} textAnchor="end">
              {formats.money(Math.round(perKg), view.kitchen.currency)}
            </text>
          </g>
        ))}
        {[from, until].map((on, at) => (
          <text key={on} className="plot-text" x={xOf(on)} y={HEIGHT - 8} textAnchor={at === 0 ? "start" : "end"}>
            {formats.day(on)}
          </text>
        ))}
        {histories.map((history, at) => (
          <Course key={history.pack} history={history} at={at} xOf={xOf} yOf={yOf} until={until} />
        ))}
      </svg>
      <figcaption className="small">
        <p className="soft">{further.prices.historyOf(food)}</p>
        <ul className="lines close">
          {histories.map(({ pack, label, shop }, at) => (
            <li key={pack} className="legend-line">
              <svg className="legend" viewBox="0 0 36 14" aria-hidden="true">
                <path className="course" d="M0 7H36" strokeDasharray={DASHES[at % DASHES.length]} />
                <Mark at={at} x={18} y={7} />
              </svg>
              {label}, {names.shop(shop)}
            </li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}

interface CourseProps {
  readonly history: PriceHistory;
  readonly at: number;
  readonly xOf: (on: CivilDate) => number;
  readonly yOf: (perKg: number) => number;
  readonly until: CivilDate;
}

function Course({ history, at, xOf, yOf, until }: CourseProps): ReactNode {
  const looks = history.points.flatMap(({ on, perKgMinor }) =>
    perKgMinor === undefined ? [] : [{ on, x: xOf(on), y: yOf(perKgMinor) }],
  );
  const [first, ...later] = looks;
  if (first === undefined) return null;
  const path = `M${first.x} ${first.y}${later.map(({ x, y }) => `H${x}V${y}`).join("")}H${xOf(until)}`;
  return (
    <g>
      <path className="course" d={path} strokeDasharray={DASHES[at % DASHES.length]} />
      {looks.map(({ on, x, y }) => (
        <Mark key={`${on} ${y}`} at={at} x={x} y={y} />
      ))}
    </g>
  );
}

/** Circle, square, wedge, bar across: one shape for each pack. */
function Mark({ at, x, y }: { readonly at: number; readonly x: number; readonly y: number }): ReactNode {
  const shapes = [
    `M${x - 4} ${y}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0`,
    `M${x - 4} ${y - 4}h8v8h-8z`,
    `M${x} ${y - 5}l5 9h-10z`,
    `M${x - 5} ${y}l5 -5l5 5l-5 5z`,
    `M${x - 5} ${y - 2}h10v4h-10z`,
  ];
  return <path className="course-mark" d={shapes[at % shapes.length]} />;
}
