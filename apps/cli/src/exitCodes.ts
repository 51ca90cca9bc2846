/** What the program answers to the shell; `docs/commands.md` documents it. */
export const EXIT = {
  done: 0,
  /** The program itself is wrong. */
  defect: 1,
  /** What was given can't be used, or the command was not written as it should be. */
  badInput: 2,
  /** What was given is sound, but no plan keeps every limit, or none was found before the search was stopped. */
  noPlan: 3,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
