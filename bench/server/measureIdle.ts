import { openSqliteHost } from "@halfloaf/server/host";
import { ServerProcess } from "@halfloaf/server/testing/process";
import { Phone } from "./Phone.ts";
import { settleKitchen } from "./settle.ts";

/** What sockets that do nothing cost. */
export interface IdleCost {
  readonly sockets: number;
  readonly emptyBytes: number;
  readonly bytes: number;
}

const DEVICES = 4;

/** So many sockets are opened at a time. */
const TOGETHER = 50;

/** Opens so many sockets, four in a kitchen, lets them be for a while, and looks at the server's memory. */
export async function measureIdle(folder: string, sockets: number, seconds: number): Promise<IdleCost> {
  const store = openSqliteHost(`${folder}/kitchens.sqlite`);
  const members = [];
  while (members.length < sockets) members.push(...(await settleKitchen(store, DEVICES)));
  await store.close();
  const server = await ServerProcess.start({ HALFLOAF_FOLDER: folder });
  const emptyBytes = server.memoryBytes;
  const phones: Phone[] = [];
  for (let from = 0; from < sockets; from += TOGETHER) {
    const some = members.slice(from, Math.min(sockets, from + TOGETHER));
    phones.push(...(await Promise.all(some.map((member) => Phone.open(server.port, member, () => {})))));
  }
  let bytes = 0;
  for (let second = 0; second < seconds; second++) {
    await new Promise((resolve) => setTimeout(resolve, 1_000));
    bytes = Math.max(bytes, server.memoryBytes);
  }
  for (const phone of phones) phone.close();
  await server.kill("SIGTERM");
  return { sockets, emptyBytes, bytes };
}
