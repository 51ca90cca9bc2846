/** What this device remembers by itself: its name in the record, its kitchens, and the one that is open. */
export interface Device {
  readonly name: string;
  readonly kitchens: readonly KitchenOnDevice[];
  /** Id of the kitchen that is open; absent where there is none yet. */
  readonly open?: string;
  /** Id of the eater who uses it. */
  readonly by?: string;
  /** Kitchens that were taken off the list; their databases are still there. */
  readonly removed?: readonly KitchenOnDevice[];
}

export interface KitchenOnDevice {
  /** Name of its database. */
  readonly id: string;
  readonly title: string;
}

const KEY = "halfloaf-device";

/** The device as it is remembered; a new one gets a name by chance. */
export function readDevice(): Device {
  try {
    const known: unknown = JSON.parse(localStorage.getItem(KEY) ?? "null");
    if (isDevice(known)) return known;
  } catch {
    // Storage that can't be read, or holds something else, is as if there were none.
  }
  const fresh: Device = { name: `device-${Math.floor(Math.random() * 36 ** 6).toString(36)}`, kitchens: [] };
  writeDevice(fresh);
  return fresh;
}

/** Remembers the device; where storage is refused, it lasts as long as the page. */
export function writeDevice(device: Device): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(device));
  } catch {
    // The kitchen itself tells when it can't be kept; here nothing is lost but a name.
  }
}

function isDevice(value: unknown): value is Device {
  return typeof value === "object" && value !== null && "name" in value && "kitchens" in value;
}
