import type { CivilDate } from "../../../quantity/index.ts";
import { wasteOn } from "../../../stores/index.ts";
import type { EventOf } from "../event.ts";
import type { Pen } from "../Pen.ts";
import type { RecordState } from "../recordState.ts";

/** Events that throw away all that has gone off before a day; what is not known to have is left alone. */
export function throwAway(state: RecordState, on: CivilDate, pen: Pen): EventOf<"wasted">[] {
  return wasteOn(state.lots.values(), on).map((movement) => pen.write(movement));
}
