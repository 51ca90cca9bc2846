import * as Comlink from "comlink";
import { PlannerService } from "./PlannerService.ts";

// The browser's side: a module worker that serves whoever started it.
Comlink.expose(new PlannerService());
