import { STEP_KIND_WORDS } from "@halfloaf/words/en/steps";
import { toCounted } from "@halfloaf/words/toCounted";

const counted = toCounted("en");

/** Texts of the cooks' pace in English; the other languages have the same keys. */
export const paceEn = {
  pace: {
    note: "How long steps take against what dishes state. Plans and orders of work reckon with it; few steps count little, and what fire and time do is never shortened.",
    none: "Nothing is known yet: every step is taken to last as long as its dish states. Tell steps done by the stove as they are done, then the stores.",
    someone: "not said who",
    steps: (count: number) => counted(count, { one: "1 step seen", other: `${count} steps seen` }),
    took: (share: string) => `took ${share} of the stated time`,
    reckoned: (share: string) => `reckoned with ${share}`,
    byHand: "set by hand",
    back: "Set back",
    allBack: "Set all back",
    kinds: STEP_KIND_WORDS,
  },
};
