import { FAULT_WORDS_EN } from "@halfloaf/words/en/faults";
import { showValue } from "@halfloaf/words/faults";

export { quote, tellPath, valueAt } from "@halfloaf/words/faults";

/** A value as a fault shows it: on one line, harmless, shortened; "nothing" for what is not there. */
export function tellValue(value: unknown): string {
  return showValue(value, FAULT_WORDS_EN.values);
}
