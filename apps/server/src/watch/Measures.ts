import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from "prom-client";

/** What a server counts and measures of itself, for Prometheus. */
export class Measures {
  readonly registry = new Registry();
  readonly sockets = new Gauge({ name: "halfloaf_sockets", help: "Open sockets.", registers: [this.registry] });
  readonly kitchens = new Gauge({
    name: "halfloaf_kitchens_open",
    help: "Kitchens with at least one open socket.",
    registers: [this.registry],
  });
  readonly rows = new Counter({ name: "halfloaf_rows_kept_total", help: "Rows kept.", registers: [this.registry] });
  readonly refused = new Counter({
    name: "halfloaf_rows_refused_total",
    help: "Rows refused, by reason.",
    labelNames: ["reason"],
    registers: [this.registry],
  });
  readonly farewells = new Counter({
    name: "halfloaf_farewells_total",
    help: "Sockets that the server ended, by reason.",
    labelNames: ["reason"],
    registers: [this.registry],
  });
  readonly troubles = new Counter({
    name: "halfloaf_store_troubles_total",
    help: "Questions that the store could not answer, by reason.",
    labelNames: ["reason"],
    registers: [this.registry],
  });
  readonly pushSeconds = new Histogram({
    name: "halfloaf_push_seconds",
    help: "From a push coming in to its rows being on disk.",
    buckets: [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5],
    registers: [this.registry],
  });
  readonly leftOut = new Counter({
    name: "halfloaf_journal_left_out_total",
    help: "Refusals that were not written down, since their address had caused too many.",
    registers: [this.registry],
  });
  readonly requests = new Counter({
    name: "halfloaf_requests_total",
    help: "Answers over HTTP, by status.",
    labelNames: ["status"],
    registers: [this.registry],
  });

  /** `isWhole` adds what Node tells of its own process. */
  constructor({ isWhole = false } = {}) {
    if (isWhole) collectDefaultMetrics({ register: this.registry });
  }
}
