import { type Interfaces, isOfThisMachine, reachableAt } from "./reachableAt.ts";

/** Lines for whoever has started a server: where it is, and how others in the same network reach it or could. */
export function tellWhere(hostname: string, port: number, interfaces: Interfaces): string[] {
  const isAlone = isOfThisMachine(hostname);
  const own = hostname === "0.0.0.0" || hostname === "::" ? "localhost" : hostname;
  const others = reachableAt(isAlone ? "0.0.0.0" : hostname, port, interfaces).join(" or ");
  return [
    `Halfloaf is served at http://${own.includes(":") ? `[${own}]` : own}:${port}/`,
    isAlone
      ? `Only this machine reaches it. Started with HOST=0.0.0.0 npm start, phones in the same network reach it${others === "" ? "" : ` at ${others}`}`
      : `Phones in the same network reach it at ${others}`,
    "There they need https for use without a network and for the camera: docs/hosting.md, At home.",
    "Ctrl-C ends it. What you keep stays in the browser; what you share is kept here as well.",
  ];
}
