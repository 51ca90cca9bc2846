// The build for browsers listens as a web worker does; here a thread of Node gives it what it listens to.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import { compileFunction } from "node:vm";
import { workerData as file, parentPort } from "node:worker_threads";

globalThis.postMessage = (message) => parentPort.postMessage(message);
globalThis.addEventListener = (_, listener) => parentPort.on("message", (data) => listener({ data }));

// Its package calls every .js file a module, but this one is a script that reads its own folder.
const run = compileFunction(readFileSync(file, "utf8"), ["require", "__filename", "__dirname"], { filename: file });
run(createRequire(file), file, dirname(file));
