import { SITTING_KINDS } from "halfloaf/dish";
import type { WeekPlan } from "halfloaf/kitchen";
import { kitchenOfMenu } from "halfloaf/kitchen/record";
import { addDays, type CivilDate } from "halfloaf/quantity";
import {
  type Claim,
  countPacks,
  dayHtml,
  dayLesson,
  lessonHtml,
  type Paper,
  type Printed,
  ribbonsSvg,
  toCalendar,
  toDaySheet,
  toWeekSheet,
  type WeekSource,
  weekHtml,
  writeCalendar,
} from "halfloaf/sheet";
import { type ReactNode, useMemo, useState } from "react";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { useNames } from "../kitchen/useNames.ts";
import { useFurther } from "../words/useFurther.ts";
import { ClaimFields } from "./ClaimFields.tsx";
import { PaperField } from "./PaperField.tsx";
import { type Made, SheetPanel } from "./SheetPanel.tsx";
import { SittingTimesFields } from "./SittingTimesFields.tsx";
import { saveFile } from "./saveFile.ts";
import { useCatalogue } from "./useCatalogue.ts";
import { useFileName } from "./useFileName.ts";
import { useSittingTimes } from "./useSittingTimes.ts";

/** The shown days on paper, as a calendar and as a picture. */
export default function WeekSheets({ week }: { readonly week: WeekPlan }): ReactNode {
  const { further, formats } = useFurther("sheets");
  const { view } = useKitchen();
  const catalogue = useCatalogue();
  const nameFile = useFileName();
  const source = useWeekSource(week);
  const days = Array.from({ length: week.days }, (_, at) => addDays(week.from, at));
  const [day, setDay] = useState<CivilDate>(days.includes(view.day) ? view.day : week.from);
  const [paper, setPaper] = useState<Paper>("a4");
  const [claims, setClaims] = useState<readonly Claim[]>([]);
  const [times, setTimes] = useSittingTimes();
  const { sheets } = further;
  const toMade = (printed: Printed, title: string, file: string): Made =>
    printed.kind === "printed" ? { title, html: printed.html, file } : printed.broken;
  const makeDay = (): Made => {
    const printed = dayHtml(toDaySheet(source, day), catalogue.sheet, { paper, claims });
    return toMade(printed, `${sheets.daySheet}, ${formats.longDay(day)}`, nameFile("day", day));
  };
  const makeWeek = (): Made =>
    toMade(
      weekHtml(toWeekSheet(source), catalogue.sheet, { paper, claims }),
      sheets.weekSheet,
      nameFile("week", week.from),
    );
  const makeLesson = (): Made => {
    const html = lessonHtml(dayLesson(source, day, catalogue.sheet.language), catalogue.sheet);
    return { title: `${sheets.dayLesson}, ${formats.longDay(day)}`, html, file: nameFile("day lesson", day) };
  };
  const drawRibbons = (): string => {
    const words = catalogue.ribbons(week.kitchen, week.from, countPacks(week));
    return ribbonsSvg(week, source.tables.foods, source.names, words, catalogue.sheet.figures);
  };
  const saveCalendar = (): undefined => {
    const text = writeCalendar({
      name: catalogue.sheet.calendar.name(week.kitchen),
      entries: toCalendar(source, catalogue.sheet, times),
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      stamp: new Date().toISOString().replace(/[-:]|\.\d+/g, ""),
    });
    saveFile(`${nameFile("calendar", week.from)}.ics`, text, "text/calendar");
  };
  const kinds = SITTING_KINDS.filter((kind) => week.sittings.some((sitting) => sitting.kind === kind));
  return (
    <SheetPanel
      currency={week.currency}
      ways={[
        { name: sheets.daySheet, make: makeDay },
        { name: sheets.weekSheet, make: makeWeek },
        { name: sheets.dayLesson, make: makeLesson },
        { name: sheets.calendar, make: saveCalendar },
      ]}
      pictures={[{ name: sheets.ribbons, file: nameFile("ribbons", week.from), draw: drawRibbons }]}
    >
      <div className="fields">
        <ChoiceField
          label={sheets.day}
          value={day}
          choices={days.map((each) => [each, formats.day(each)] as const)}
          onChange={setDay}
        />
        <PaperField paper={paper} onPaper={setPaper} />
      </div>
      <ClaimFields currency={week.currency} onClaims={setClaims} />
      <SittingTimesFields kinds={kinds} times={times} onTimes={setTimes} />
    </SheetPanel>
  );
}

/** A week with the kitchen it was planned for: as it was when it was accepted, or as it is now. */
function useWeekSource(week: WeekPlan): WeekSource {
  const { session, view } = useKitchen();
  const names = useNames();
  const { menu, state, tables } = view;
  const kitchen = useMemo(() => {
    if (menu === undefined || menu.week !== week) return view.kitchen;
    const rows = { events: session.kept.events.events, edits: session.kept.edits.all() };
    return kitchenOfMenu(menu, state.menus, rows, tables);
  }, [menu, week, view.kitchen, session, state, tables]);
  return { week, kitchen, tables, names };
}
