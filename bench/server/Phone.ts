import { type Membership, type ServerMessage, SYNC_PATH, SYNC_PROTOCOL } from "@halfloaf/keep/sync";
import { WebSocket } from "ws";

/** A device that ticks packs and hears of others' ticks, and holds no kitchen: so many fit into one process. */
export class Phone {
  readonly #socket: WebSocket;
  readonly #writer: string;
  readonly #heard: (id: string) => void;
  readonly #kept = new Map<number, () => void>();
  #count = 0;

  private constructor(socket: WebSocket, writer: string, heard: (id: string) => void) {
    this.#socket = socket;
    this.#writer = writer;
    this.#heard = heard;
  }

  /** Comes into its kitchen; `heard` is told the id of each row of others. */
  static open(port: number, { kitchen, device, credential }: Membership, heard: (id: string) => void): Promise<Phone> {
    const socket = new WebSocket(`ws://127.0.0.1:${port}${SYNC_PATH}`, { perMessageDeflate: false });
    const phone = new Phone(socket, device, heard);
    return new Promise((resolve, reject) => {
      socket.once("error", reject);
      socket.once("open", () =>
        socket.send(
          JSON.stringify({ say: "hello", protocol: SYNC_PROTOCOL, kitchen, credential, after: 0, writer: device }),
        ),
      );
      socket.on("message", (data) => {
        const message = JSON.parse(data.toString()) as ServerMessage;
        if (message.say === "welcome") resolve(phone);
        else phone.#take(message);
      });
    });
  }

  /** Tells that a pack came home; `kept` is called once the server has it on disk. Gives the row's id. */
  tick(kept: () => void): string {
    const ref = ++this.#count;
    const id = `${this.#writer}-${ref}`;
    const row = {
      id,
      atMs: Date.now(),
      tick: 0,
      by: "ada",
      kind: "bought",
      on: "2026-03-02",
      lot: `oats-rolled-${id}`,
      food: "oats-rolled",
      place: "dry-store",
      massG: 500,
      costMinor: 85,
      shop: "market-hall",
      planned: { week: "2026-03-02", lot: "oats-1" },
    };
    this.#kept.set(ref, kept);
    this.#socket.send(JSON.stringify({ say: "push", ref, rows: [row] }));
    return id;
  }

  close(): void {
    this.#socket.terminate();
  }

  #take(message: ServerMessage): void {
    if (message.say === "rows") for (const row of message.rows) this.#heard((row as { id: string }).id);
    if (message.say === "answer") {
      if (message.refused.length > 0) throw new Error(JSON.stringify(message.refused));
      this.#kept.get(message.ref)?.();
      this.#kept.delete(message.ref);
    }
    if (message.say === "trouble" || message.say === "bye") throw new Error(JSON.stringify(message));
  }
}
