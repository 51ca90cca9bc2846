export {
  type CalendarManner,
  type HostAnswer,
  HostDesk,
  type ListedCalendar,
  type ListedDevice,
  type ListedInvitation,
} from "./HostDesk.ts";
export { type Invitation, parseInvitationLink, toInvitationLink } from "./invitationLink.ts";
export { KitchenSync, type SyncOptions, toSyncMemory } from "./KitchenSync.ts";
export { mayWrite, type RowAsked } from "./mayWrite.ts";
export {
  Credential,
  DeviceMessage,
  type Farewell,
  GivenName,
  type Present,
  parseMessage,
  type Refusal,
  ROLES,
  type Role,
  ServerMessage,
  SYNC_PATH,
  SYNC_PROTOCOL,
} from "./messages.ts";
export { toNumberRuns } from "./numberRuns.ts";
export type { Membership, Socket, SyncMark, SyncMemory, SyncState, SyncView } from "./syncView.ts";
