import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import pg from "pg";

/** A database or a wire of its own, in a folder of its own, until it is stopped. */
export interface Service {
  readonly url: string;
  /** Ends it without warning, as a loss of power would. */
  kill(): Promise<void>;
  /** Starts it again where it was. */
  start(): Promise<void>;
  /** Ends it for good and clears its folder. */
  stop(): Promise<void>;
}

/** Where Debian and others put the programs of PostgreSQL 15; undefined where there are none. */
export function findPostgres(): string | undefined {
  const folders = ["/usr/lib/postgresql/15/bin", "/usr/pgsql-15/bin", ...pathFolders()];
  return folders.find((folder) => existsSync(join(folder, "initdb")) && existsSync(join(folder, "postgres")));
}

/** The program of Redis; undefined where there is none. */
export function findRedis(): string | undefined {
  return findProgram("redis-server");
}

/** A program by its name, also one that is for administrators alone; undefined where there is none. */
export function findProgram(name: string): string | undefined {
  return [...pathFolders(), "/usr/sbin", "/usr/local/sbin"].map((folder) => join(folder, name)).find(existsSync);
}

/** A certificate and its key as PEM, for a service that is to speak TLS alone, on a port of this machine. */
interface Tls {
  readonly certificate: string;
  readonly key: string;
}

/** Starts a PostgreSQL of its own on a socket in a temporary folder, so that no port is taken; with TLS on a port. */
export async function startPostgres(programs: string, tls?: Tls): Promise<Service> {
  const folder = mkdtempSync(join(tmpdir(), "halfloaf-postgres-"));
  // PostgreSQL refuses to run as root.
  const owner = process.getuid?.() === 0 ? { uid: idOf("-u"), gid: idOf("-g") } : {};
  if (owner.uid !== undefined && owner.gid !== undefined) chownSync(folder, owner.uid, owner.gid);
  const data = join(folder, "data");
  const words = ["-D", data, "-U", "halfloaf", "-A", "trust", "-N", "-E", "UTF8", "--no-locale", "--no-instructions"];
  execFileSync(join(programs, "initdb"), words, { ...owner, stdio: "pipe", cwd: folder });
  const port = tls === undefined ? undefined : await findFreePort();
  const url =
    port === undefined
      ? `postgresql://halfloaf@localhost/postgres?host=${encodeURIComponent(folder)}`
      : `postgresql://halfloaf@127.0.0.1:${port}/postgres?`;
  const settings = [
    ...(port === undefined ? ["listen_addresses="] : ["listen_addresses=127.0.0.1", `port=${port}`, "ssl=on"]),
    `unix_socket_directories=${folder}`,
    "max_connections=60",
    "shared_buffers=32MB",
  ];
  if (tls !== undefined) {
    for (const [name, text] of [
      ["server.crt", tls.certificate],
      ["server.key", tls.key],
      ["pg_hba.conf", "hostssl all all 127.0.0.1/32 trust\n"],
    ] as const) {
      writeFileSync(join(data, name), text, { mode: 0o600 });
      if (owner.uid !== undefined && owner.gid !== undefined) chownSync(join(data, name), owner.uid, owner.gid);
    }
  }
  const run = () =>
    spawn(join(programs, "postgres"), ["-D", data, ...settings.flatMap((each) => ["-c", each])], {
      ...owner,
      cwd: folder,
      stdio: ["ignore", "ignore", "pipe"],
    });
  return keepRunning(url, folder, run, /ready to accept connections/);
}

/** Makes an empty database beside the others of a PostgreSQL, and gives its address. */
export async function makeDatabase({ url }: Service, name: string): Promise<string> {
  const client = new pg.Client(url);
  await client.connect();
  await client.query(`CREATE DATABASE ${name}`);
  await client.end();
  return url.replace("/postgres?", `/${name}?`);
}

/** Starts a Redis of its own on a free port of this machine, which keeps nothing. */
export async function startRedis(program: string, tls?: Tls): Promise<Service> {
  const folder = mkdtempSync(join(tmpdir(), "halfloaf-redis-"));
  const port = await findFreePort();
  const [certificate, key] = [join(folder, "certificate"), join(folder, "key")];
  if (tls !== undefined) {
    writeFileSync(certificate, tls.certificate);
    writeFileSync(key, tls.key, { mode: 0o600 });
  }
  const files = ["--tls-cert-file", certificate, "--tls-key-file", key, "--tls-ca-cert-file", certificate];
  const ports =
    tls === undefined
      ? ["--port", String(port)]
      : ["--port", "0", "--tls-port", String(port), ...files, "--tls-auth-clients", "no"];
  const words = [...ports, "--bind", "127.0.0.1", "--save", "", "--appendonly", "no", "--dir", folder];
  const run = () => spawn(program, words, { stdio: ["ignore", "pipe", "ignore"] });
  const url = `${tls === undefined ? "redis" : "rediss"}://127.0.0.1:${port}`;
  return keepRunning(url, folder, run, /Ready to accept connections/i);
}

/** Runs a program until it is stopped; `ready` is what it says once it can be used, absent where it says nothing. */
export async function keepRunning(
  url: string,
  folder: string,
  run: () => ChildProcess,
  ready: RegExp | (() => Promise<boolean>),
): Promise<Service> {
  let child: ChildProcess | undefined;
  // What was killed may still hold its folder or port for a moment.
  const start = async (left = 40): Promise<void> => {
    child = run();
    try {
      await (ready instanceof RegExp ? untilSaid(child, ready) : untilTrue(child, ready));
    } catch (error) {
      if (left === 0) throw error;
      await new Promise((resolve) => setTimeout(resolve, 250));
      await start(left - 1);
    }
  };
  const end = async (signal: NodeJS.Signals) => {
    const ending = child;
    if (ending === undefined || ending.exitCode !== null || ending.signalCode !== null) return;
    await new Promise<void>((resolve) => {
      ending.once("exit", () => resolve());
      ending.kill(signal);
    });
  };
  await start();
  return {
    url,
    start: () => start(),
    kill: () => end("SIGKILL"),
    stop: async () => {
      await end("SIGINT");
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function untilTrue(child: ChildProcess, isReady: () => Promise<boolean>): Promise<void> {
  while (!(await isReady())) {
    if (child.exitCode !== null) throw new Error(`It ended with ${child.exitCode}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

function untilSaid(child: ChildProcess, ready: RegExp): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = "";
    const hear = (text: Buffer) => {
      // Whoever is ready is heard no further, but the pipe is emptied for as long as it speaks.
      if (ready.test(said)) return;
      said += text.toString();
      if (ready.test(said)) resolve();
    };
    child.stdout?.on("data", hear);
    child.stderr?.on("data", hear);
    child.once("error", reject);
    child.once("exit", (code) => reject(new Error(`It ended with ${code}: ${said.slice(-2_000)}`)));
  });
}

/** A port of this machine that nothing listens on. */
export function findFreePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => resolve(typeof address === "object" && address !== null ? address.port : 0));
    });
  });
}

function idOf(which: "-u" | "-g"): number {
  for (const name of ["postgres", "nobody"]) {
    try {
      return Number(execFileSync("id", [which, name], { stdio: "pipe" }).toString());
    } catch {
      // There is no such user; the next one may be there.
    }
  }
  throw new Error("PostgreSQL refuses to run as root, and here is neither a user postgres nor nobody");
}

function pathFolders(): string[] {
  return (process.env.PATH ?? "").split(":").filter((folder) => folder !== "");
}
