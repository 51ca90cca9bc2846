import process from "node:process";
import { fileURLToPath } from "node:url";
import { type Serving, serve } from "./serve.ts";

/** The port that is taken where none is asked for; a free one where it is in use. */
const USUAL_PORT = 4620;

const files = fileURLToPath(new URL("../../web/dist", import.meta.url));
const host = process.env.HOST ?? "127.0.0.1";
const asked = process.env.PORT;

const serving = await start();
console.log(`Halfloaf is served at http://${host === "0.0.0.0" ? "localhost" : host}:${serving.port}/`);
console.log("Ctrl-C ends it. What you keep stays in the browser.");
for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => void serving.close());

async function start(): Promise<Serving> {
  if (asked !== undefined) return serve({ files }, Number(asked), host);
  try {
    return await serve({ files }, USUAL_PORT, host);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    return serve({ files }, 0, host);
  }
}
