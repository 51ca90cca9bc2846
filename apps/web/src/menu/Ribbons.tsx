import type { FoodTable } from "halfloaf/food";
import type { WeekPlan } from "halfloaf/kitchen";
import { FOOD_KINDS, layRibbons, RIBBON_SIZES, type Ribbon, type RibbonPicture } from "halfloaf/sheet";
import { type ReactNode, useId, useMemo } from "react";
import { useWords } from "../words/WordsContext.tsx";
import "./ribbons.css";

/** What is lit: a dish with all packs that feed it, or a pack with all plates it feeds. */
export type Lit = { readonly batch: number } | { readonly lot: string } | undefined;

interface RibbonsProps {
  readonly week: WeekPlan;
  readonly foods: FoodTable;
  readonly titleOf: (dish: string) => string;
  readonly nameOf: (food: string) => string;
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
}

const HEAD = 118;
const { lane: LANE, pack: PACK, station: STATION } = RIBBON_SIZES;

/** The week's packs as ribbons: from the day each is bought through the plates it feeds to its end. */
export function Ribbons({ week, foods, titleOf, nameOf, lit, onLight }: RibbonsProps): ReactNode {
  const { words, formats } = useWords();
  const picture = useMemo(() => layRibbons(week, foods), [week, foods]);
  const patterns = useId();
  const height = HEAD + picture.lanes * LANE + 8;
  const isLit = (ribbon: Ribbon): boolean | undefined =>
    lit === undefined
      ? undefined
      : "lot" in lit
        ? lit.lot === ribbon.lot
        : ribbon.beads.some(({ batch }) => batch === lit.batch);
  return (
    <figure className="ribbons">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard. */}
      <section className="ribbons-window" tabIndex={0} aria-label={words.menu.ribbons}>
        <div className="ribbons-paper" style={{ width: picture.width, height }}>
          <Days picture={picture} height={height} formats={formats} />
          <svg className="ribbons-picture" width={picture.width} height={height} aria-hidden="true">
            <Patterns id={patterns} />
            {picture.stations.map(({ sitting, x }) => (
              <line key={sitting} className="ribbons-thread" x1={x} x2={x} y1={HEAD - 6} y2={height} />
            ))}
            {picture.ribbons.map((ribbon) => (
              <OneRibbon
                key={ribbon.lot}
                ribbon={ribbon}
                pattern={`url(#${patterns}${ribbon.kind})`}
                name={nameOf(ribbon.food)}
                isLit={isLit(ribbon)}
                onTouch={() =>
                  onLight(lit !== undefined && "lot" in lit && lit.lot === ribbon.lot ? undefined : { lot: ribbon.lot })
                }
              />
            ))}
          </svg>
          {picture.stations.map(({ sitting, x }) => {
            const planned = week.sittings[sitting] as WeekPlan["sittings"][number];
            const isOn =
              lit === undefined
                ? undefined
                : "batch" in lit
                  ? lit.batch === planned.batch
                  : feeds(week, lit.lot, planned.batch);
            return (
              <button
                key={sitting}
                type="button"
                className="ribbons-station"
                data-lit={isOn}
                aria-pressed={lit !== undefined && "batch" in lit && lit.batch === planned.batch}
                style={{ left: x - STATION / 2, width: STATION, top: 26, height: HEAD - 34 }}
                onClick={() =>
                  onLight(
                    lit !== undefined && "batch" in lit && lit.batch === planned.batch
                      ? undefined
                      : { batch: planned.batch },
                  )
                }
              >
                <span className="soft">{words.sittings[planned.kind]}</span>
                <span>{titleOf(planned.dish)}</span>
              </button>
            );
          })}
        </div>
      </section>
      <figcaption className="small soft">
        {words.menu.legend} {picture.shelf.length > 0 && words.menu.shelf(picture.shelf.length)}
      </figcaption>
    </figure>
  );
}

function feeds({ batches }: WeekPlan, lot: string, batch: number): boolean {
  return batches[batch]?.uses.some((use) => use.lot === lot) ?? false;
}

function Days({
  picture,
  height,
  formats,
}: {
  readonly picture: RibbonPicture;
  readonly height: number;
  readonly formats: ReturnType<typeof useWords>["formats"];
}): ReactNode {
  return picture.days.map(({ date, x, width }) => (
    <div key={date} className="ribbons-day" style={{ left: x, width, height }}>
      {formats.day(date)}
    </div>
  ));
}

interface OneRibbonProps {
  readonly ribbon: Ribbon;
  readonly pattern: string;
  readonly name: string;
  readonly isLit: boolean | undefined;
  readonly onTouch: () => void;
}

function OneRibbon({ ribbon, pattern, name, isLit, onTouch }: OneRibbonProps): ReactNode {
  const top = HEAD + ribbon.lane * LANE;
  const middle = top + 30;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the table below says and does the same for keyboard and reader.
    // biome-ignore lint/a11y/useKeyWithClickEvents: the same.
    <g className="ribbon" data-lit={isLit} data-end={ribbon.end} onClick={onTouch}>
      <rect x={ribbon.fromX} y={top} width={Math.max(48, ribbon.toX - ribbon.fromX)} height={LANE} fill="transparent" />
      {ribbon.stretches.map(({ fromX, toX, share }) => {
        const thick = Math.max(2.5, PACK * share);
        return (
          <g key={fromX}>
            <rect className="ribbon-ground" x={fromX} y={middle - thick / 2} width={toX - fromX} height={thick} />
            <rect x={fromX} y={middle - thick / 2} width={toX - fromX} height={thick} fill={pattern} />
          </g>
        );
      })}
      {ribbon.openedX !== undefined && (
        <path className="ribbon-opened" d={`M${ribbon.openedX - 5} ${middle - 14}h10l-5 6z`} />
      )}
      {ribbon.lastX !== undefined && <path className="ribbon-last" d={`M${ribbon.lastX - 1} ${middle - 13}v26`} />}
      {ribbon.beads.map(({ x, batch }) => (
        <circle key={batch} className="ribbon-bead" cx={x} cy={middle} r={5.5} />
      ))}
      <End ribbon={ribbon} y={middle} />
      <text className="ribbon-name" x={ribbon.fromX + 4} y={top + 14}>
        {name}
      </text>
    </g>
  );
}

/** What becomes of the rest: an open arrow where it is carried over, a cross where it is thrown away. */
function End({ ribbon: { end, toX }, y }: { readonly ribbon: Ribbon; readonly y: number }): ReactNode {
  if (end === "carried") return <path className="ribbon-end" d={`M${toX - 9} ${y - 8}l8 8l-8 8`} />;
  if (end === "wasted") return <path className="ribbon-end" d={`M${toX - 12} ${y - 6}l12 12m0 -12l-12 12`} />;
  return null;
}

/** One pattern for each kind of food, told apart without colour. */
function Patterns({ id }: { readonly id: string }): ReactNode {
  const marks: Record<(typeof FOOD_KINDS)[number], ReactNode> = {
    dry: <circle cx="3" cy="3" r="1.4" />,
    fresh: <path d="M0 6L6 0" />,
    dairy: <path d="M0 3h6" />,
    protein: <path d="M3 0v6M0 3h6" />,
    fat: <path d="M0 3q1.5 -3 3 0t3 0" fill="none" />,
    other: null,
  };
  return (
    <defs>
      {FOOD_KINDS.map((kind) => (
        <pattern key={kind} id={`${id}${kind}`} width="6" height="6" patternUnits="userSpaceOnUse">
          <g className={`pattern ${kind}`}>{marks[kind]}</g>
        </pattern>
      ))}
    </defs>
  );
}
