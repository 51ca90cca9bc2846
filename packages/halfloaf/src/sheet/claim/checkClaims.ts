import type { DaySheet, DaySittingLine } from "../day/DaySheet.ts";
import type { BrokenClaim, Claim } from "./Claim.ts";

type Line = Omit<BrokenClaim, "claim" | "over">;

/** Every line of the days that contradicts one of the claims; empty where all of them are true. */
export function checkClaims(claims: readonly Claim[], days: readonly DaySheet[]): BrokenClaim[] {
  return claims.flatMap((claim) =>
    days
      .flatMap((day) => linesOf(claim, day))
      .filter(({ value }) => value >= claim.below)
      .map((line) => ({ claim, ...line, over: line.value - claim.below })),
  );
}

/** The figures of a day that a claim speaks of. */
function linesOf({ kind }: Claim, day: DaySheet): Line[] {
  const { date, sittings } = day;
  const of = ({ kind: sitting, dish }: DaySittingLine) => ({ date, sitting, dish });
  switch (kind) {
    case "plate":
      return sittings.flatMap((line) =>
        line.plates.map(({ eater, costMinor }) => ({ ...of(line), eater, value: costMinor })),
      );
    case "day":
      return day.eaters.map(({ eater, costMinor }) => ({ date, eater, value: costMinor }));
    case "ready":
      return sittings.map((line) => ({ ...of(line), value: line.elapsedMinutes }));
    case "hands-on":
      return sittings.map((line) => ({ ...of(line), value: line.handsOnMinutes }));
    case "waste":
      return [{ date, value: day.flow.wasteMinor }];
  }
}
