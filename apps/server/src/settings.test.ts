import { describe, expect, it } from "vitest";
import { parseSettings } from "./settings.ts";

describe("The settings of a server", () => {
  it("need nothing: it is on this machine alone, open, and keeps in SQLite", () => {
    expect(parseSettings({ XDG_DATA_HOME: "/srv" })).toEqual({
      ok: true,
      value: {
        hostname: "127.0.0.1",
        folder: "/srv/halfloaf-server",
        registration: { kind: "open" },
        trustedProxies: 0,
        origins: [],
        logLevel: "info",
      },
    });
  });

  it("tell all that is wrong at once, and never a secret", () => {
    const read = parseSettings({
      PORT: "many",
      HALFLOAF_METRICS_TOKEN: "short-secret",
      DATABASE_URL: "mysql://u:hush@h",
    });
    if (read.ok) throw new Error("it was taken");
    expect(read.issues.map(({ path }) => path[0])).toEqual(["PORT", "DATABASE_URL", "HALFLOAF_METRICS_TOKEN"]);
    expect(JSON.stringify(read)).not.toMatch(/hush|short-secret/);
  });

  it("forget no kitchen unless a number of days is given, and none that may be a holiday", () => {
    expect(parseSettings({ HALFLOAF_FORGET_DAYS: "365" })).toMatchObject({ value: { forgetDays: 365 } });
    expect(parseSettings({ HALFLOAF_FORGET_DAYS: "29" })).toMatchObject({ ok: false });
  });

  it("ask for a code where registration does, and for PostgreSQL where there are several servers", () => {
    expect(parseSettings({ HALFLOAF_REGISTRATION: "code" })).toMatchObject({ ok: false });
    expect(parseSettings({ REDIS_URL: "redis://127.0.0.1" })).toMatchObject({ ok: false });
  });
});
