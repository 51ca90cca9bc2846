/** The tables as servers of layout 1 made them, frozen: a store with them must open for ever. */
export function writeLayoutOne({ whole, blob, end }: { whole: string; blob: string; end: string }): string {
  return `
  CREATE TABLE kitchens (
    id TEXT PRIMARY KEY, log TEXT NOT NULL, up_to ${whole} NOT NULL, bytes ${whole} NOT NULL
  )${end};
  CREATE TABLE devices (
    kitchen TEXT NOT NULL, id TEXT NOT NULL, name TEXT NOT NULL, role TEXT NOT NULL, secret_hash ${blob} NOT NULL,
    made_at_ms ${whole} NOT NULL, seen_at_ms ${whole} NOT NULL, PRIMARY KEY (kitchen, id)
  )${end};
  CREATE TABLE invitations (
    id TEXT PRIMARY KEY, kitchen TEXT NOT NULL, role TEXT NOT NULL, secret_hash ${blob} NOT NULL, made_by TEXT NOT NULL,
    expires_at_ms ${whole} NOT NULL
  )${end};
  CREATE INDEX invitations_of_kitchen ON invitations (kitchen);
  CREATE TABLE writers (
    kitchen TEXT NOT NULL, writer TEXT NOT NULL, device TEXT NOT NULL, PRIMARY KEY (kitchen, writer)
  )${end};
  CREATE TABLE log_rows (
    kitchen TEXT NOT NULL, seq ${whole} NOT NULL, id TEXT NOT NULL, device TEXT NOT NULL, content TEXT NOT NULL,
    PRIMARY KEY (kitchen, seq)
  )${end};
  CREATE UNIQUE INDEX log_rows_by_id ON log_rows (kitchen, id);
  INSERT INTO kitchens VALUES ('kitchenold', 'logold000', 1, 14);
  INSERT INTO log_rows VALUES ('kitchenold', 1, 'a-1', 'deviceold', '{"id":"a-1"}');`;
}

/** What a store with those tables must still tell. */
export const LAYOUT_ONE_ROWS = [{ seq: 1, id: "a-1", device: "deviceold", text: '{"id":"a-1"}' }];
