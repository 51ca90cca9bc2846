/** The seed of all that is searched for a reason, so that the same question has the same answer. */
export const SEED = 1;
/** Moves of each search of a reason. */
export const REASON_MOVES = 5000;
