export { hashSecret, makeName, makeSecret } from "../secrets.ts";
export { type HostStore, isFault } from "./HostStore.ts";
export { openPostgresHost } from "./openPostgresHost.ts";
export { openSqliteHost } from "./openSqliteHost.ts";
