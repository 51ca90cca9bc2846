/** What the server bears from one device, one kitchen, one address. */
export interface Limits {
  /** Bytes of one message over a socket, and of one request over HTTP. */
  readonly messageBytes: number;
  readonly requestBytes: number;
  /** Characters of a row. */
  readonly rowChars: number;
  /** Rows and bytes of a kitchen's log. */
  readonly kitchenRows: number;
  readonly kitchenBytes: number;
  readonly devicesOfKitchen: number;
  readonly invitationsOfKitchen: number;
  readonly calendarsOfKitchen: number;
  /** Messages of a socket: beyond these it is closed. */
  readonly messages: Rate;
  /** Rows of a socket: beyond these it has to wait. */
  readonly rows: Rate;
  /** Questions over HTTP from one address. */
  readonly requests: Rate;
  /** New kitchens from one address. */
  readonly kitchens: Rate;
  /** Wrong secrets for one name (a device, an invitation, the registration) from one address: neighbours don't shut each other out. */
  readonly mistakes: Rate;
  /** Sockets that one address opens, and that it has open. */
  readonly arrivals: Rate;
  readonly socketsOfAddress: number;
  readonly sockets: number;
  /** Bytes that may wait for a device that reads slowly, and for how long none of them may leave. */
  readonly waitingBytes: number;
  readonly waitingMs: number;
  /** How long a request may take to come in, head and all. */
  readonly requestMs: number;
  /** How long a socket may say nothing at first. */
  readonly helloMs: number;
}

/** So many at once, and so many more each second. */
export interface Rate {
  readonly burst: number;
  readonly perSecond: number;
}

const HOUR_S = 3_600;

/**
 * What is borne where nothing else is set. Behind one address may be a students' union: 300 people with a phone and a laptop
 * each who join within ten minutes of one evening, in 75 flats that each make a kitchen, with some ten questions each.
 * So many go through; what one person can do with a program is little more, and is told in docs/threats.md.
 */
export const USUAL_LIMITS: Limits = {
  messageBytes: 1_000_000,
  requestBytes: 16_384,
  rowChars: 256_000,
  kitchenRows: 500_000,
  kitchenBytes: 200_000_000,
  devicesOfKitchen: 50,
  invitationsOfKitchen: 20,
  calendarsOfKitchen: 50,
  messages: { burst: 200, perSecond: 50 },
  rows: { burst: 20_000, perSecond: 300 },
  requests: { burst: 600, perSecond: 10 },
  kitchens: { burst: 100, perSecond: 100 / HOUR_S },
  // At most 80 in the first hour; ASVS 2.2.1 allows 100.
  mistakes: { burst: 20, perSecond: 60 / HOUR_S },
  arrivals: { burst: 1_000, perSecond: 10 },
  socketsOfAddress: 1_000,
  sockets: 20_000,
  waitingBytes: 1_000_000,
  waitingMs: 30_000,
  requestMs: 20_000,
  helloMs: 10_000,
};
