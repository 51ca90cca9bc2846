import { INK, LINE, round, svgText } from "./svgFrame.ts";

/** The area of a plot, and where values stand in it. */
export interface PlotArea {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly marks: readonly string[];
}

interface AreaParts {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly xTicks: readonly { readonly value: number; readonly label: string }[];
  readonly yTicks: readonly { readonly value: number; readonly label: string }[];
  readonly xTitle: string;
  readonly yTitle: string;
  /** False where the places across are named by what stands there. */
  readonly hasXLines?: boolean;
}

/** The lines and labels of both axes; ticks bound the area. */
export function plotArea(parts: AreaParts): PlotArea {
  const { left, top, width, height, xTicks, yTicks, xTitle, yTitle, hasXLines = true } = parts;
  const scale = (ticks: AreaParts["xTicks"], from: number, to: number) => {
    const [first = 0, last = 1] = [ticks[0]?.value, ticks.at(-1)?.value];
    return (value: number) => from + ((value - first) / (last - first || 1)) * (to - from);
  };
  const x = scale(xTicks, left, left + width);
  const y = scale(yTicks, top + height, top);
  const line = (path: string, ink = LINE) => `<path d="${path}" stroke="${ink}" fill="none"/>`;
  return {
    x,
    y,
    marks: [
      ...yTicks.flatMap(({ value, label }) => [
        line(`M${left} ${round(y(value))}H${left + width}`),
        svgText(left - 6, y(value) + 4, label, "end"),
      ]),
      ...xTicks.flatMap(({ value, label }) => [
        ...(hasXLines ? [line(`M${round(x(value))} ${top}V${top + height}`)] : []),
        svgText(x(value), top + height + 16, label, "middle"),
      ]),
      line(`M${left} ${top}V${top + height}H${left + width}`, INK),
      svgText(left - 6, top - 10, yTitle, "start"),
      svgText(left + width, top + height + 34, xTitle, "end"),
    ],
  };
}
