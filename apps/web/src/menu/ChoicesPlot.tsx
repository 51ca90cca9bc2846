import { niceStep } from "halfloaf/sheet";
import type { MouseEvent, ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import type { ChoicesShown } from "./ChoicesShown.ts";
import type { ChoiceTold } from "./reasoning/Told.ts";

const HEIGHT = 290;
/** Room for the figures of the axes. */
const LEFT = 64;
const FOOT = 32;
const HEAD = 52;
const LINES = 4;
const TICKS = 2;

interface Scale {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

/** Choices as points: what money is weighed against across, money upwards; the cheapest lowest. */
export function ChoicesPlot({ choices, against, shown, currency, onPick }: ChoicesShown): ReactNode {
  const { further, formats } = useFurther("menu");
  const { choices: said } = further;
  const other = ({ minutes, distinct, shortfallMinor }: ChoiceTold): number =>
    against === "minutes" ? minutes : against === "variety" ? distinct : shortfallMinor;
  const tellOther = (value: number): string => {
    if (against === "minutes") return formats.minutes(value);
    return against === "variety" ? formats.number(value) : formats.money(Math.round(value), currency);
  };
  const across = toScale(choices.map(other), TICKS);
  const upwards = toScale(
    choices.map(({ moneyMinor }) => moneyMinor),
    LINES,
  );
  const x = (value: number): number => share(across, value);
  const y = (value: number): number => 1 - share(upwards, value);
  const place = (choice: ChoiceTold): { left: string; top: string } => ({
    left: `calc(${LEFT}px + (100% - ${LEFT + 24}px) * ${x(other(choice))})`,
    top: `${HEAD + (HEIGHT - HEAD - FOOT) * y(choice.moneyMinor)}px`,
  });
  /** Points may lie close together, so a touch means the one that is nearest. */
  const pickNearest = (event: MouseEvent<HTMLElement>): void => {
    const points = [...event.currentTarget.querySelectorAll(".choices-point")];
    const distances = points.map((point) => {
      const { left, top, width, height } = point.getBoundingClientRect();
      return Math.hypot(left + width / 2 - event.clientX, top + height / 2 - event.clientY);
    });
    const nearest = choices[distances.indexOf(Math.min(...distances))];
    if (nearest !== undefined) onPick(nearest.week);
  };
  return (
    <figure className="choices-plot">
      <figcaption className="unseen">{said.picture}</figcaption>
      <div className="choices-paper" style={{ height: HEIGHT }} aria-hidden="true" onClick={pickNearest}>
        <p className="choices-axis small soft">↑ {said.money}</p>
        {upwards.ticks.map((value) => (
          <div key={value} className="choices-line" style={{ top: HEAD + (HEIGHT - HEAD - FOOT) * y(value) }}>
            <span className="choices-figure small figure">{formats.money(value, currency)}</span>
          </div>
        ))}
        {across.ticks.map((value) => (
          <span
            key={value}
            className="choices-tick small figure"
            style={{ left: `calc(${LEFT}px + (100% - ${LEFT + 24}px) * ${x(value)})` }}
          >
            {tellOther(value)}
          </span>
        ))}
        {choices.map((choice) => (
          <span
            key={choice.moneyMinor}
            className="choices-point"
            style={place(choice)}
            data-shown={choice.week === shown || undefined}
          />
        ))}
      </div>
      <p className="small soft choices-foot">{said.axis[against]} →</p>
    </figure>
  );
}

function share({ from, to }: Scale, value: number): number {
  return to === from ? 0.5 : (value - from) / (to - from);
}

function toScale(values: readonly number[], steps: number): Scale {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const step = niceStep((most - least || Math.max(1, most / 10)) / steps);
  const from = Math.floor(least / step) * step;
  const to = Math.max(from + step, Math.ceil(most / step) * step);
  const count = Math.round((to - from) / step);
  return { from, to, ticks: Array.from({ length: count + 1 }, (_, at) => from + at * step) };
}
