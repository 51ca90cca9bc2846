/**
 * What is said most often of why something was thrown away, for screens to name in every language: it went bad, there was too
 * much of it, nobody liked it, or it fell, burnt or got wet. What ended its life by the record is a `KeepingLimit`; any other
 * text is a reason as somebody wrote it. The choice is our own, no source.
 */
export const WASTE_REASONS = ["spoilt", "too-much", "not-liked", "mishap"] as const;
export type WasteReason = (typeof WASTE_REASONS)[number];
