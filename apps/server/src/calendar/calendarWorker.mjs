// Node 20 does not carry the hooks of a TypeScript runner into worker threads: they are registered here anew.
import { register } from "tsx/esm/api";

register();
await import("./calendarWorker.ts");
