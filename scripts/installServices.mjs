// Brings PostgreSQL 15, Redis and a balancer onto a Debian build machine, where the tests of the server start their own; elsewhere
// it says which tests will be skipped. Never fails: without them the server is tested on SQLite alone.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const wanted = [
  { package: "postgresql-15", path: "/usr/lib/postgresql/15/bin/postgres" },
  { package: "redis-server", path: "/usr/bin/redis-server" },
  { package: "haproxy", path: "/usr/sbin/haproxy" },
  { package: "openssl", path: "/usr/bin/openssl" },
];
const missing = () => wanted.filter(({ path }) => !existsSync(path)).map((each) => each.package);

const mayInstall = process.platform === "linux" && process.getuid() === 0 && existsSync("/usr/bin/apt-get");
if (missing().length > 0 && mayInstall) {
  const environment = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const install = () => spawnSync("apt-get", ["install", "-y", ...missing()], { env: environment, stdio: "pipe" });
  if (install().status !== 0) {
    spawnSync("apt-get", ["update"], { env: environment, stdio: "pipe" });
    install();
  }
}
const absent = missing();
console.log(
  absent.length === 0
    ? "PostgreSQL 15, Redis and HAProxy are here: the server is tested on them as well."
    : `Not here: ${absent.join(", ")}. Tests of the server that need them are skipped.`,
);
