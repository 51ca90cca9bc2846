import { execFileSync, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeCertificate } from "./makeCertificate.testing.ts";
import { findFreePort, findProgram, keepRunning, type Service } from "./startServices.testing.ts";

/** A balancer that is run with the file of `docs/hosting`, as it stands there but for folders, ports and addresses. */
export interface BalancerKind {
  readonly program: string;
  readonly file: string;
  /** Words that have it only look at its file. */
  readonly check: readonly string[];
  readonly run: readonly string[];
  /** What stands around the file where it is a part of another one. */
  wrap(text: string, folder: string): string;
}

export const BALANCERS: readonly BalancerKind[] = [
  {
    program: "haproxy",
    file: "balancer.cfg",
    check: ["-c", "-f"],
    run: ["-db", "-f"],
    wrap: (text) => text,
  },
  {
    program: "nginx",
    file: "nginx.conf",
    check: ["-t", "-c"],
    run: ["-g", "daemon off;", "-c"],
    wrap: (text, folder) =>
      `pid ${folder}/pid; error_log ${folder}/errors; events {} http { ${[
        "client_body",
        "proxy",
        "fastcgi",
        "uwsgi",
        "scgi",
      ]
        .map((each) => `${each}_temp_path ${folder}/${each};`)
        .join(" ")}\n${text}\n}`,
  },
];

/** A balancer that runs, and what its visitors must trust. */
export interface Balancer extends Service {
  readonly port: number;
  readonly plainPort: number;
  /** The certificate that it shows. */
  readonly certificate: string;
}

const documents = fileURLToPath(new URL("../../../../docs/hosting/", import.meta.url));

/** Starts a balancer in front of servers on these ports of this machine, with a certificate of its own; its file is checked first. */
export async function startBalancer(
  { program, file, check, run, wrap }: BalancerKind,
  ports: readonly number[],
): Promise<Balancer> {
  const path = findProgram(program);
  if (path === undefined) throw new Error(`${program} is not on this machine`);
  const folder = mkdtempSync(join(tmpdir(), `halfloaf-${program}-`));
  const certificates = join(folder, "certificates");
  mkdirSync(certificates);
  const { certificate, key } = makeCertificate();
  writeFileSync(join(certificates, "kitchens.pem"), `${certificate}${key}`, { mode: 0o600 });
  const [port, plainPort] = [await findFreePort(), await findFreePort()];
  const text = ports
    .reduce(
      (read, each, at) => read.replaceAll(`server-${at + 1}:4620`, `127.0.0.1:${each}`),
      readFileSync(join(documents, file), "utf8"),
    )
    .replaceAll("/certificates/", `${certificates}/`)
    .replace(/\b8443\b/, `127.0.0.1:${port}`)
    .replace(/\b8080\b/, `127.0.0.1:${plainPort}`)
    .replaceAll("bind :127", "bind 127");
  const settings = join(folder, file);
  writeFileSync(settings, wrap(text, folder));
  execFileSync(path, [...check, settings], { stdio: "pipe" });
  const service = await keepRunning(
    `https://127.0.0.1:${port}`,
    folder,
    () => spawn(path, [...run, settings], { stdio: "ignore" }),
    () => isOpen(port),
  );
  return { ...service, port, plainPort, certificate };
}

function isOpen(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(port, "127.0.0.1", () => {
      socket.destroy();
      resolve(true);
    });
    socket.on("error", () => resolve(false));
  });
}
