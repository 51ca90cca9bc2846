/** So far apart that the numbers drawn from two seeds don't meet within any search: the generator counts up from its seed. */
const APART = 268_435_399;
const SEEDS = 2 ** 32;

/** Seed of one of several searches of a job, by its place among them; the first has the seed of the job itself. */
export function furtherSeed(seed: number, place: number): number {
  return (seed + place * APART) % SEEDS;
}
