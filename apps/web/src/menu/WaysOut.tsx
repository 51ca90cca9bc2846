import type { WeekPlan } from "halfloaf/kitchen";
import type { EditedKitchen } from "halfloaf/kitchen/record";
import { type ReactNode, useId, useState } from "react";
import { Link } from "wouter";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { goEarlier } from "./reasoning/goEarlier.ts";
import type { ImpossibleTold, Knob, WayOut } from "./reasoning/Told.ts";
import { nameKnob } from "./reasoning/toKnobs.ts";
import { turnKnobs } from "./reasoning/turnKnobs.ts";
import "./ways.css";

interface WaysOutProps {
  readonly told: ImpossibleTold;
  /** What the button says that takes a week which a longer search found after all. */
  readonly take: string;
  readonly onTake: (week: WeekPlan) => void;
  /** The kitchen is to be changed; with a week, that one is possible then. */
  readonly onChange: (change: (kitchen: EditedKitchen) => EditedKitchen, week: WeekPlan | undefined) => void;
}

/** What stands in the way of a menu, and the smallest steps that would be enough, ready to be set. */
export function WaysOut({ told, take, onTake, onChange }: WaysOutProps): ReactNode {
  const { words, further, formats } = useFurther("menu", "impossible");
  const { impossible } = further;
  switch (told.kind) {
    case "gaps":
      return (
        <>
          <ul>
            {told.gaps.map(({ date, sitting, moreMinutes, isBeforeTrips }) => {
              const at = further.week.at(formats.day(date), words.sittings[sitting]);
              return (
                <li key={at}>
                  {isBeforeTrips
                    ? impossible.gapTrips(at)
                    : moreMinutes === undefined
                      ? impossible.gap(at)
                      : impossible.gapMinutes(at, formats.minutes(Math.ceil(moreMinutes)))}
                </li>
              );
            })}
          </ul>
          {told.gaps.some(({ isBeforeTrips }) => isBeforeTrips) && (
            <Earlier earlier={told.earlier} onChange={onChange} />
          )}
          {told.way !== undefined && <Way way={told.way} at={1} onChange={onChange} />}
        </>
      );
    case "possible":
      return (
        <div className="row">
          <p>{impossible.collision.possible}</p>
          <button type="button" className="button main" onClick={() => onTake(told.week)}>
            {take}
          </button>
        </div>
      );
    case "collision":
      return <Collision told={told} onChange={onChange} />;
  }
}

interface EarlierProps {
  readonly earlier: Extract<ImpossibleTold, { kind: "gaps" }>["earlier"];
  readonly onChange: WaysOutProps["onChange"];
}

/** What gives a dish to sittings before the first trip: what is there already, or an earlier trip. */
function Earlier({ earlier, onChange }: EarlierProps): ReactNode {
  const { words, further } = useFurther("impossible");
  const { impossible } = further;
  const names = useNames();
  return (
    <>
      <p>
        {impossible.putDown} <Link href="/stores">{words.screens.stores}</Link>
      </p>
      {earlier !== undefined && (
        <Allowed to="edited" otherwise={<RoleNote />}>
          <div>
            <button
              type="button"
              className="button main"
              onClick={() => onChange((kitchen) => goEarlier(kitchen, earlier), undefined)}
            >
              {impossible.goEarlier(names.shop(earlier.shop), words.sittings[earlier.sitting])}
            </button>
          </div>
        </Allowed>
      )}
    </>
  );
}

interface CollisionProps {
  readonly told: Extract<ImpossibleTold, { kind: "collision" }>;
  readonly onChange: WaysOutProps["onChange"];
}

function Collision({ told, onChange }: CollisionProps): ReactNode {
  const { impossible } = useFurther("impossible").further;
  const { collision } = impossible;
  const ways = told.ways.filter(({ knobs }) => knobs.length > 0);
  return (
    <>
      {told.collisions.map((kinds) => {
        const names = kinds.map((kind) => collision.limits[kind]);
        const said = names.length < 2 ? collision.stands(names[0] ?? "") : collision.collide(names);
        return <p key={said}>{said}</p>;
      })}
      {told.onlyWholePacks && <p>{collision.wholePacks}</p>}
      {ways.length === 0 ? <p>{impossible.noWay}</p> : <h3>{impossible.ways}</h3>}
      {ways.map((way, at) => (
        <Way key={way.knobs.map(nameKnob).join()} way={way} at={at + 1} onChange={onChange} />
      ))}
    </>
  );
}

interface WayProps {
  readonly way: WayOut;
  readonly at: number;
  readonly onChange: WaysOutProps["onChange"];
}

function Way({ way, at, onChange }: WayProps): ReactNode {
  const { impossible } = useFurther("impossible").further;
  const [values, setValues] = useState(() => way.knobs.map(({ enough }) => enough));
  const settings = way.knobs.map((knob, of) => ({ knob, value: values[of] ?? knob.enough }));
  const isEnough =
    way.otherwise.length === 0 &&
    settings.every(({ knob: { now, enough }, value }) => (enough >= now ? value >= enough : value <= enough));
  const apply = (): void => onChange((kitchen) => turnKnobs(kitchen, settings), isEnough ? way.week : undefined);
  return (
    <fieldset className="group way-out">
      <legend className="small soft">{impossible.way(at)}</legend>
      {way.knobs.map((knob, of) => (
        <Slider
          key={nameKnob(knob)}
          knob={knob}
          value={values[of] ?? knob.enough}
          onChange={(value) => setValues(values.with(of, value))}
        />
      ))}
      {way.otherwise.length > 0 && (
        <p className="small">
          {impossible.otherwise(way.otherwise.map((limit) => impossible.limits[limit]).join(", "))}
        </p>
      )}
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div>
          <button type="button" className="button main" onClick={apply}>
            {impossible.apply}
          </button>
        </div>
      </Allowed>
    </fieldset>
  );
}

interface SliderProps {
  readonly knob: Knob;
  readonly value: number;
  readonly onChange: (value: number) => void;
}

/** From as it is to twice as far as is enough; more is always enough too. */
function Slider({ knob, value, onChange }: SliderProps): ReactNode {
  const { words, further, formats } = useFurther("menu", "impossible");
  const { view } = useKitchen();
  const names = useNames();
  const field = useId();
  const { limit, now, enough, weekday, sitting, shop } = knob;
  const far = Math.max(0, 2 * enough - now);
  const step = limit === "budget" ? 10 : 1;
  // A range snaps to steps from its least: what is enough must be one of them.
  const least = Math.min(now, far) + ((enough - Math.min(now, far)) % step);
  const tell = (amount: number): string => {
    if (limit === "budget") return formats.money(amount, view.edited.currency);
    return limit === "hands-on" || limit === "elapsed" ? formats.minutes(amount) : formats.number(amount);
  };
  const weekly = sitting === undefined ? undefined : view.edited.sittings[sitting];
  const where = [
    ...(weekday === undefined ? [] : [further.weekdays[weekday - 1]]),
    ...(weekly === undefined
      ? []
      : [words.sittings[weekly.kind], weekly.on.map((day) => further.weekdaysShort[day - 1]).join(" ")]),
    ...(shop === undefined ? [] : [names.shop(shop)]),
  ];
  return (
    <div className="slider">
      <label htmlFor={field}>
        {[further.impossible.limits[limit], ...where].join(", ")}{" "}
        <span className="small soft">({further.impossible.from(tell(now))})</span>
      </label>
      <input
        id={field}
        type="range"
        min={least}
        max={Math.max(now, far)}
        step={step}
        value={value}
        aria-valuetext={tell(value)}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
      <output htmlFor={field} className="figure">
        {tell(value)}
      </output>
    </div>
  );
}
