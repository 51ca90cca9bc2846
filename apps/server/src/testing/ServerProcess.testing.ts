import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { findFreePort } from "./startServices.testing.ts";

const main = fileURLToPath(new URL("../main.ts", import.meta.url));

/** Bytes of a page of memory and ticks of a second, as Linux on x86 and ARM servers has them. */
const PAGE_BYTES = 4_096;
const TICKS_PER_S = 100;

/** The real server in a process of its own, always on the same port. */
export class ServerProcess {
  readonly port: number;
  readonly #environment: Readonly<Record<string, string>>;
  #child: ChildProcess | undefined;

  private constructor(port: number, environment: Readonly<Record<string, string>>) {
    this.port = port;
    this.#environment = environment;
  }

  /** `port` is a free one where none is given. */
  static async start(environment: Readonly<Record<string, string>>, port?: number): Promise<ServerProcess> {
    const server = new ServerProcess(port ?? (await findFreePort()), environment);
    await server.start();
    return server;
  }

  get url(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  /** Starts it, again where it ends by itself as when its database is away, and waits until it is ready. */
  async start(left = 100): Promise<void> {
    const child = spawn(process.execPath, ["--import", "tsx", main], {
      env: {
        ...process.env,
        HALFLOAF_LOG: "error",
        HALFLOAF_SOCKETS_OF_ADDRESS: "1000000",
        ...this.#environment,
        PORT: String(this.port),
      },
      stdio: ["ignore", "pipe", "pipe"],
    });
    this.#child = child;
    let said = "";
    child.stderr.on("data", (text) => {
      said = (said + text).slice(-2_000);
    });
    for (;;) {
      if (child.exitCode !== null) {
        if (left === 0) throw new Error(`The server ended: ${said}`);
        return this.start(left - 1);
      }
      if (child.signalCode !== null) return;
      if (await isReady(this.url)) return;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }

  async kill(signal: NodeJS.Signals = "SIGKILL"): Promise<void> {
    const child = this.#child;
    if (child === undefined || child.exitCode !== null || child.signalCode !== null) return;
    await new Promise<void>((resolve) => {
      child.once("exit", () => resolve());
      child.kill(signal);
    });
  }

  /** The process as the system names it; 0 where there is none. */
  get pid(): number {
    return this.#child?.pid ?? 0;
  }

  /** Memory that it holds now, in bytes. */
  get memoryBytes(): number {
    return Number(readFileSync(`/proc/${this.pid}/statm`, "utf8").split(" ")[1]) * PAGE_BYTES;
  }

  /** Processor time that it has used, in seconds. */
  get processorS(): number {
    const fields = readFileSync(`/proc/${this.pid}/stat`, "utf8").split(") ")[1]?.split(" ") ?? [];
    return (Number(fields[11]) + Number(fields[12])) / TICKS_PER_S;
  }
}

async function isReady(url: string): Promise<boolean> {
  try {
    return (await fetch(`${url}/ready`, { signal: AbortSignal.timeout(2_000) })).ok;
  } catch {
    return false;
  }
}
