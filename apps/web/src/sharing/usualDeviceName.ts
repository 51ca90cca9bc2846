/** What a device is called to the others as long as nobody says otherwise. */
export function usualDeviceName({ phone, laptop }: { readonly phone: string; readonly laptop: string }): string {
  return matchMedia("(pointer: coarse)").matches ? phone : laptop;
}
