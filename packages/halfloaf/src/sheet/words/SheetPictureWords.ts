/** Words of the pictures. */
export interface SheetPictureWords {
  readonly driversTitle: (dish: string) => string;
}
