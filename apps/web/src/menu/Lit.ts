/** What is lit: a plate with all packs that feed it, or a pack with all plates it feeds. */
export type Lit =
  /** `sitting` is the position of the plate that was touched, `batch` that of its cooking. */
  { readonly batch: number; readonly sitting: number } | { readonly lot: string } | undefined;
