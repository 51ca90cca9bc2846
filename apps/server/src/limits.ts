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
  /** Messages of a socket: beyond these it is closed. */
  readonly messages: Rate;
  /** Rows of a socket: beyond these it has to wait. */
  readonly rows: Rate;
  /** Questions over HTTP from one address. */
  readonly requests: Rate;
  /** New kitchens from one address. */
  readonly kitchens: Rate;
  /** Wrong credentials and invitations from one address. */
  readonly mistakes: Rate;
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

/** What is borne where nothing else is set. */
export const USUAL_LIMITS: Limits = {
  messageBytes: 1_000_000,
  requestBytes: 16_384,
  rowChars: 256_000,
  kitchenRows: 500_000,
  kitchenBytes: 200_000_000,
  devicesOfKitchen: 50,
  invitationsOfKitchen: 20,
  messages: { burst: 200, perSecond: 50 },
  rows: { burst: 20_000, perSecond: 300 },
  requests: { burst: 120, perSecond: 2 },
  kitchens: { burst: 10, perSecond: 10 / HOUR_S },
  mistakes: { burst: 20, perSecond: 60 / HOUR_S },
  socketsOfAddress: 400,
  sockets: 20_000,
  waitingBytes: 1_000_000,
  waitingMs: 30_000,
  requestMs: 20_000,
  helloMs: 10_000,
};
