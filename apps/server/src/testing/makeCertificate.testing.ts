import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findProgram } from "./startServices.testing.ts";

/** Makes a certificate for this machine's own address that is its own authority, with its key, both as PEM. */
export function makeCertificate(): { readonly certificate: string; readonly key: string } {
  const program = findProgram("openssl");
  if (program === undefined) throw new Error("openssl is not on this machine");
  const folder = mkdtempSync(join(tmpdir(), "halfloaf-certificate-"));
  const [key, certificate] = [join(folder, "key"), join(folder, "certificate")] as const;
  const words = ["req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes", "-days", "2"];
  const names = ["-subj", "/CN=kitchens.example", "-addext", "subjectAltName=IP:127.0.0.1"];
  execFileSync(program, [...words, ...names, "-keyout", key, "-out", certificate], { stdio: "pipe" });
  const made = { certificate: readFileSync(certificate, "utf8"), key: readFileSync(key, "utf8") };
  rmSync(folder, { recursive: true });
  return made;
}
