import type { WeekPlan } from "halfloaf/kitchen";
import { kitchenOfMenu } from "halfloaf/kitchen/record";
import { addDays, type CivilDate } from "halfloaf/quantity";
import {
  type BrokenClaim,
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
import { BrokenClaims } from "./BrokenClaims.tsx";
import { ClaimFields } from "./ClaimFields.tsx";
import { type MadePage, PagePreview } from "./PagePreview.tsx";
import { PaperField } from "./PaperField.tsx";
import { PictureButtons } from "./PictureButtons.tsx";
import { saveFile } from "./saveFile.ts";
import { useCatalogue } from "./useCatalogue.ts";
import { useFileName } from "./useFileName.ts";

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
  const [made, setMade] = useState<MadePage | readonly BrokenClaim[]>();
  const { sheets } = further;
  const show = (printed: Printed, title: string, file: string): void =>
    setMade(printed.kind === "printed" ? { title, html: printed.html, file } : printed.broken);
  const makeDay = (): void => {
    const printed = dayHtml(toDaySheet(source, day), catalogue.sheet, { paper, claims });
    show(printed, `${sheets.daySheet}, ${formats.longDay(day)}`, nameFile("day", day));
  };
  const makeWeek = (): void =>
    show(
      weekHtml(toWeekSheet(source), catalogue.sheet, { paper, claims }),
      sheets.weekSheet,
      nameFile("week", week.from),
    );
  const makeLesson = (): void => {
    const html = lessonHtml(dayLesson(source, day), catalogue.sheet);
    setMade({ title: `${sheets.dayLesson}, ${formats.longDay(day)}`, html, file: nameFile("day lesson", day) });
  };
  const drawRibbons = (): string => {
    const words = catalogue.ribbons(week.kitchen, week.from, countPacks(week));
    return ribbonsSvg(week, source.tables.foods, source.names, words, catalogue.sheet.figures);
  };
  const saveCalendar = (): void => {
    const text = writeCalendar({
      name: catalogue.sheet.calendar.name(week.kitchen),
      entries: toCalendar(source, catalogue.sheet),
      zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      stamp: new Date().toISOString().replace(/[-:]|\.\d+/g, ""),
    });
    saveFile(`${nameFile("calendar", week.from)}.ics`, text, "text/calendar");
  };
  return (
    <>
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
      <div className="row">
        <button type="button" className="button" onClick={makeDay}>
          {sheets.daySheet}
        </button>
        <button type="button" className="button" onClick={makeWeek}>
          {sheets.weekSheet}
        </button>
        <button type="button" className="button" onClick={makeLesson}>
          {sheets.dayLesson}
        </button>
        <button type="button" className="button" onClick={saveCalendar}>
          {sheets.calendar}
        </button>
      </div>
      {made !== undefined &&
        ("html" in made ? (
          <PagePreview page={made} />
        ) : (
          <BrokenClaims broken={made} currency={week.currency} words={catalogue.sheet} />
        ))}
      <PictureButtons name={sheets.ribbons} file={nameFile("ribbons", week.from)} draw={drawRibbons} />
    </>
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
