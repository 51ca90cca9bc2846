import { connect } from "node:net";
import type { Membership, ServerMessage } from "@halfloaf/keep/sync";
import { SYNC_PATH, SYNC_PROTOCOL } from "@halfloaf/keep/sync";
import { WebSocket } from "ws";

/** A socket that says whatever it is told to, honest or not. */
export interface Speaker {
  readonly socket: WebSocket;
  /** All that the server has said. */
  readonly heard: ServerMessage[];
  say(message: unknown): void;
  /** The next message of that kind, from where it was looked last. */
  next<Say extends ServerMessage["say"]>(say: Say): Promise<Extract<ServerMessage, { say: Say }>>;
  /** The code with which it was closed. */
  readonly closed: Promise<number>;
}

/** Opens a socket, or gives the HTTP status with which it was refused. */
export function openSpeaker(
  { port }: { readonly port: number },
  { headers = {}, path = SYNC_PATH }: { headers?: Record<string, string>; path?: string } = {},
): Promise<Speaker | number> {
  const socket = new WebSocket(`ws://127.0.0.1:${port}${path}`, { headers, perMessageDeflate: false });
  const heard: ServerMessage[] = [];
  const hearers = new Set<() => void>();
  let looked = 0;
  socket.on("message", (data) => {
    heard.push(JSON.parse(data.toString()) as ServerMessage);
    for (const hear of hearers) hear();
  });
  const closed = new Promise<number>((resolve) => socket.once("close", (code) => resolve(code)));
  const find = (say: string) => heard.findIndex((each, at) => at >= looked && each.say === say);
  const next: Speaker["next"] = (say) =>
    new Promise((resolve, reject) => {
      const look = () => {
        const at = find(say);
        if (at < 0) return;
        looked = at + 1;
        hearers.delete(look);
        resolve(heard[at] as never);
      };
      hearers.add(look);
      void closed.then((code) => reject(new Error(`closed with ${code} before "${say}"`)));
      look();
    });
  const say = (message: unknown) => socket.send(typeof message === "string" ? message : JSON.stringify(message));
  return new Promise((resolve, reject) => {
    socket.once("open", () => resolve({ socket, heard, say, next, closed }));
    socket.once("unexpected-response", (_, answer) => resolve(answer.statusCode ?? 0));
    socket.once("error", reject);
  });
}

/** Opens a socket that must be taken. */
export async function openTaken(...words: Parameters<typeof openSpeaker>): Promise<Speaker> {
  const speaker = await openSpeaker(...words);
  if (typeof speaker === "number") throw new Error(`refused with ${speaker}`);
  return speaker;
}

/** The first words of an honest device. */
export function hello({ kitchen, credential }: Membership, over: object = {}): object {
  return { say: "hello", protocol: SYNC_PROTOCOL, kitchen, credential, after: 0, ...over };
}

/** Opens a socket and comes in. */
export async function comeIn(host: { readonly port: number }, membership: Membership, over: object = {}) {
  const speaker = await openTaken(host);
  speaker.say(hello(membership, over));
  await speaker.next("welcome");
  return speaker;
}

/** Sends bytes as they are and gives all that comes back. */
export function sendRaw({ port }: { readonly port: number }, bytes: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, "127.0.0.1", () => socket.write(bytes));
    let answer = "";
    socket.on("data", (data) => {
      answer += data.toString();
    });
    socket.on("end", () => resolve(answer));
    socket.on("close", () => resolve(answer));
    socket.on("error", reject);
    socket.setTimeout(3_000, () => socket.destroy());
  });
}
