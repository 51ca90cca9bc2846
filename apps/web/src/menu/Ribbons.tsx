import type { FoodTable } from "halfloaf/food";
import type { WeekPlan } from "halfloaf/kitchen";
import type { CivilDate } from "halfloaf/quantity";
import { layRibbons, type Ribbon, type RibbonPicture } from "halfloaf/sheet";
import { type ReactNode, useEffect, useId, useLayoutEffect, useMemo, useRef } from "react";
import { useWords } from "../words/WordsContext.tsx";
import type { Lit } from "./Lit.ts";
import { OneRibbon } from "./OneRibbon.tsx";
import { PatternKey, Patterns } from "./Patterns.tsx";
import { ribbonSizes } from "./ribbonSizes.ts";
import "./ribbons.css";
import { useDragging } from "./useDragging.ts";

interface RibbonsProps {
  readonly week: WeekPlan;
  /** The day that is seen first, where the week holds it. */
  readonly today: CivilDate;
  readonly foods: FoodTable;
  readonly titleOf: (dish: string) => string;
  readonly nameOf: (food: string) => string;
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
  /** A plate is held over another sitting, is let go there, or (absent) is let go nowhere. */
  readonly onOver: (sitting: number, over: number) => void;
  readonly onDrop: (sitting: number, over: number | undefined) => void;
}

/** The week's packs as ribbons: from the day each is bought through the plates it feeds to its end. */
export function Ribbons({
  week,
  today,
  foods,
  titleOf,
  nameOf,
  lit,
  onLight,
  onOver,
  onDrop,
}: RibbonsProps): ReactNode {
  const { words, formats } = useWords();
  const { sizes, head, scale } = useMemo(ribbonSizes, []);
  const picture = useMemo(() => layRibbons(week, foods, sizes), [week, foods, sizes]);
  const patterns = useId();
  const scroller = useRef<HTMLElement>(null);
  const { held, takeUp, wasDragged } = useDragging({ onOver, onDrop, scroller });
  const rows = useMemo(() => orderLanes(picture, lit), [picture, lit]);
  useEffect(() => {
    if (lit !== undefined && "batch" in lit) scroller.current?.scrollTo({ top: 0 });
  }, [lit]);
  // What is over is to the left of what is to come.
  const todayX = picture.days.find(({ date }) => date === today)?.x ?? 0;
  useLayoutEffect(() => scroller.current?.scrollTo({ left: todayX }), [todayX]);
  const height = picture.lanes * sizes.lane + 8;
  const heldPlate = held && week.sittings[held.sitting];
  return (
    <figure className="ribbons">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard. */}
      <section ref={scroller} className="ribbons-window" tabIndex={0} aria-label={words.menu.ribbons}>
        <div className="ribbons-head" style={{ width: picture.width, height: head }}>
          <Days picture={picture} tell={(date) => formats.day(date)} />
          {picture.stations.map(({ sitting, x }) => {
            const planned = week.sittings[sitting] as WeekPlan["sittings"][number];
            const { batch, kind, dish } = planned;
            const isTouchedPlate = lit !== undefined && "batch" in lit && lit.sitting === sitting;
            return (
              <button
                key={sitting}
                type="button"
                className="ribbons-station"
                data-sitting={sitting}
                data-lit={isLitPlate(week, batch, lit)}
                data-held={held?.sitting === sitting || undefined}
                data-over={held?.over === sitting || undefined}
                aria-pressed={isTouchedPlate}
                style={{
                  left: x - sizes.station / 2,
                  width: sizes.station,
                  top: 28 * scale,
                  height: head - 34 * scale,
                }}
                onPointerDown={(event) => takeUp(event, sitting)}
                onContextMenu={(event) => event.preventDefault()}
                onClick={() => {
                  if (!wasDragged()) onLight(isTouchedPlate ? undefined : { batch, sitting });
                }}
              >
                <span className="soft">{words.sittings[kind]}</span>
                <span>{titleOf(dish)}</span>
              </button>
            );
          })}
        </div>
        <div className="ribbons-paper" style={{ width: picture.width, height }}>
          <Days picture={picture} />
          <svg className="ribbons-picture" width={picture.width} height={height} aria-hidden="true">
            <Patterns id={patterns} />
            {picture.stations.map(({ sitting, x }) => (
              <line key={sitting} className="ribbons-thread" x1={x} x2={x} y1={0} y2={height} />
            ))}
            {picture.ribbons.map((ribbon) => (
              <OneRibbon
                key={ribbon.lot}
                ribbon={ribbon}
                top={(rows[ribbon.lane] ?? ribbon.lane) * sizes.lane}
                sizes={sizes}
                pattern={`url(#${patterns}${ribbon.kind})`}
                isLit={isLitRibbon(ribbon, lit)}
                onTouch={() => onLight(isTouched(ribbon, lit) ? undefined : { lot: ribbon.lot })}
              />
            ))}
          </svg>
          {picture.ribbons.map((ribbon) => (
            <div
              key={ribbon.lot}
              className="ribbon-name"
              data-lit={isLitRibbon(ribbon, lit)}
              aria-hidden="true"
              style={{
                left: ribbon.fromX,
                width: ribbon.toX - ribbon.fromX,
                top: (rows[ribbon.lane] ?? ribbon.lane) * sizes.lane,
              }}
            >
              <span>{nameOf(ribbon.food)}</span>
            </div>
          ))}
        </div>
      </section>
      {held !== undefined && heldPlate !== undefined && (
        <div className="ribbons-held" style={{ left: held.x, top: held.y }} aria-hidden="true">
          {titleOf(heldPlate.dish)}
        </div>
      )}
      <figcaption className="small soft">
        <PatternKey />
        {words.menu.legend} {picture.shelf.length > 0 && words.menu.shelf(picture.shelf.length)}
      </figcaption>
    </figure>
  );
}

/** The row of each lane: those that feed a lit plate come to the top, so that they are seen together on a small page. */
function orderLanes({ ribbons, lanes }: RibbonPicture, lit: Lit): number[] {
  const order = Array.from({ length: lanes }, (_, lane) => lane);
  if (lit === undefined || "lot" in lit) return order;
  const isLit = new Set(ribbons.filter((ribbon) => isLitRibbon(ribbon, lit)).map(({ lane }) => lane));
  const sorted = [...order.filter((lane) => isLit.has(lane)), ...order.filter((lane) => !isLit.has(lane))];
  return order.map((lane) => sorted.indexOf(lane));
}

function isTouched(ribbon: Ribbon, lit: Lit): boolean {
  return lit !== undefined && "lot" in lit && lit.lot === ribbon.lot;
}

/** Undefined while nothing is lit. */
function isLitRibbon(ribbon: Ribbon, lit: Lit): boolean | undefined {
  if (lit === undefined) return undefined;
  return "lot" in lit ? isTouched(ribbon, lit) : ribbon.beads.some(({ batch }) => batch === lit.batch);
}

function isLitPlate({ batches }: WeekPlan, batch: number, lit: Lit): boolean | undefined {
  if (lit === undefined) return undefined;
  return "batch" in lit ? lit.batch === batch : (batches[batch]?.uses.some((use) => use.lot === lit.lot) ?? false);
}

interface DaysProps {
  readonly picture: RibbonPicture;
  /** What a day is called; without it there are the stripes alone. */
  readonly tell?: (date: string) => string;
}

function Days({ picture, tell }: DaysProps): ReactNode {
  return picture.days.map(({ date, x, width }) => (
    <div key={date} className="ribbons-day" style={{ left: x, width }}>
      {tell !== undefined && <span>{tell(date)}</span>}
    </div>
  ));
}
