import type { Issue } from "halfloaf/quantity";
import type { Formats } from "../words/Formats.ts";
import type { Further } from "../words/further/Further.ts";

/** An issue of a form in words: which field, and what should stand there. */
export function tellIssue(issue: Issue, further: Further<"kitchen">, formats: Formats): string {
  const { code, path, expected, received } = issue;
  const { issues } = further;
  const field = fieldOf(issue, further);
  const bound = /^(>=|<=|>|<)(-?[\d.]+)$/.exec(expected);
  const most = bound === null ? "" : formats.number(Number(bound[2]), 2);
  if (code === "partial_check" && path[0] === "puttingBy") return further.kitchen.boxOrder;
  if (code === "eater-twice") return issues.eaterTwice(received, expected);
  if (code === "energy-share-missing") return issues.missing(field);
  if (code === "min_length" || code === "non_empty" || received === "undefined" || received === '""')
    return issues.missing(field);
  if (code === "number" || received === "NaN") return issues.number(field);
  if (code === "integer" || code === "safe_integer") return issues.whole(field);
  if (bound?.[1] === ">=") return issues.least(field, most);
  if (bound?.[1] === "<=") return issues.most(field, most);
  if (bound?.[1] === ">") return issues.above(field, most);
  return issues.other(field, expected);
}

/** What the field of an issue is called on the screen; its keys where it is on none. */
function fieldOf({ path }: Issue, { kitchen }: Further<"kitchen">): string {
  const names: Readonly<Record<string, string>> = {
    name: path[0] === "eaters" ? kitchen.eaterName : path[0] === "shops" ? kitchen.shopName : kitchen.name,
    ageYears: kitchen.age,
    heightCm: kitchen.height,
    massKg: kitchen.mass,
    rings: kitchen.rings,
    pans: kitchen.pans,
    pots: kitchen.pots,
    potPortions: kitchen.potPortions,
    boards: kitchen.boards,
    fridgeLitres: kitchen.fridgeLitres,
    freezerLitres: kitchen.freezerLitres,
    on: kitchen.days,
    eaters: path[0] === "sittings" ? kitchen.who : kitchen.eaters,
    minutes: path[0] === "shops" ? kitchen.tripMinutes : kitchen.minutes,
    costMinor: kitchen.fare,
    carryKg: kitchen.carry,
    openDays: kitchen.days,
    standRisePct: kitchen.standRise,
    sittings: kitchen.sittings,
    budgetMinor: kitchen.budget,
    handsOnMinutes: kitchen.handsOn,
    tripsPerWeek: kitchen.trips,
    distinctEvenings: kitchen.evenings,
    usesPerDish: kitchen.uses,
    mainMax: kitchen.mainMax,
    energyTolerancePct: kitchen.energyTolerance,
    portions: kitchen.boxPortions,
    least: kitchen.boxCounts.least,
    most: kitchen.boxCounts.most,
    enough: kitchen.boxCounts.enough,
    minuteMinor: kitchen.worth,
    vesselMinutes: kitchen.vesselMinutes,
    dislikePointMinor: kitchen.dislikePoint,
    kwhMinor: kitchen.kwh,
    shortfallFirstMinor: kitchen.shortFirst,
    shortfallRestMinor: kitchen.shortRest,
  };
  const key = path.findLast((each) => typeof each === "string" && Object.hasOwn(names, each));
  return (typeof key === "string" && names[key]) || path.join(" ");
}
