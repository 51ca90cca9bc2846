/** What every page ends with. */
export const CLOSING = "The label on the pack, local rules and a doctor or dietitian come before anything said here.";

const REASONS: Readonly<Record<string, string>> = {
  "under-19": "is under 19",
  pregnancy: "is pregnant",
  lactation: "is breastfeeding",
};

/** Why an eater's intake is held against nothing, and who is asked instead. */
export function tellReferral(name: string, reason: string): string {
  const why = REASONS[reason] ?? "has a need that is not known here";
  return `${name} ${why}: needs are left to a midwife, doctor or dietitian, and nothing is judged here.`;
}
