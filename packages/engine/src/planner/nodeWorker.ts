import { parentPort } from "node:worker_threads";
import * as Comlink from "comlink";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import { PlannerService } from "./PlannerService.ts";

if (!parentPort) throw new Error("this file runs in a worker thread");
Comlink.expose(new PlannerService(), nodeEndpoint(parentPort));
