import type { Ribbon, RibbonSizes } from "halfloaf/sheet";
import type { ReactNode } from "react";

interface OneRibbonProps {
  readonly ribbon: Ribbon;
  readonly top: number;
  readonly sizes: RibbonSizes;
  readonly pattern: string;
  readonly isLit: boolean | undefined;
  readonly onTouch: () => void;
}

/** A touch needs so much room. */
const TOUCH_PX = 48;

/** One pack: as thick as what is left of it, with a ring for each plate it feeds and a mark at its end. */
export function OneRibbon({ ribbon, top, sizes, pattern, isLit, onTouch }: OneRibbonProps): ReactNode {
  const middle = top + sizes.lane * 0.68;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the table below says and does the same for keyboard and reader.
    <g className="ribbon" data-lit={isLit} data-end={ribbon.end} onClick={onTouch}>
      <rect
        x={ribbon.fromX}
        y={top}
        width={Math.max(TOUCH_PX, ribbon.toX - ribbon.fromX)}
        height={sizes.lane}
        fill="transparent"
      />
      {ribbon.stretches.map(({ fromX, toX, share }) => {
        const thick = Math.max(2.5, sizes.pack * share);
        return (
          <g key={fromX}>
            <rect className="ribbon-ground" x={fromX} y={middle - thick / 2} width={toX - fromX} height={thick} />
            <rect x={fromX} y={middle - thick / 2} width={toX - fromX} height={thick} fill={pattern} />
          </g>
        );
      })}
      {ribbon.openedX !== undefined && (
        <path className="ribbon-opened" d={`M${ribbon.openedX - 6} ${middle - 17}h12l-6 8z`} />
      )}
      {ribbon.lastX !== undefined && <path className="ribbon-last" d={`M${ribbon.lastX - 1} ${middle - 15}v30`} />}
      {ribbon.beads.map(({ x, batch }) => (
        <circle key={batch} className="ribbon-bead" cx={x} cy={middle} r={6} />
      ))}
      <End ribbon={ribbon} y={middle} />
    </g>
  );
}

/** What becomes of the rest: an open arrow where it is carried over, a cross where it is thrown away. */
function End({ ribbon: { end, toX }, y }: { readonly ribbon: Ribbon; readonly y: number }): ReactNode {
  if (end === "carried") return <path className="ribbon-end" d={`M${toX - 9} ${y - 8}l8 8l-8 8`} />;
  if (end === "wasted") return <path className="ribbon-end" d={`M${toX - 12} ${y - 6}l12 12m0 -12l-12 12`} />;
  return null;
}
