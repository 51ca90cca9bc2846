import type { LimitKind } from "halfloaf/menu";

/** What is said of limits that can't all hold, in one language. */
export interface CollisionWords {
  /** What each kind of limit is called within a sentence. */
  readonly limits: Readonly<Record<LimitKind, string>>;
  /** Limits of which any one let go is enough; at least two. */
  readonly collide: (limits: readonly string[]) => string;
  /** A limit that can't be kept whatever else is let go. */
  readonly stands: (limit: string) => string;
  /** Said after either, where packs cut at will would do. */
  readonly wholePacks: string;
  /** Said where no single kind of limit is enough to loosen. */
  readonly noneAlone: string;
  /** Said where a search with loosened limits came upon a plan that keeps all of them. */
  readonly possible: string;
}
