/** True for the name that a week gives to a guest, of whom its kitchen knows nothing. */
export function isGuest(id: string): boolean {
  return /^guest-\d+$/.test(id);
}
