/**
 * Moves of a search by how long somebody is ready to wait for it: a look, the usual one, one that is worth waiting for.
 * Our own choice, no source.
 */
export const EFFORTS = { quick: 60_000, usual: 840_000, long: 4_000_000 } as const;
export type Effort = keyof typeof EFFORTS;
