import { Component, type ReactNode } from "react";
import type { Words } from "../words/en.ts";

interface BrokenProps {
  readonly words: Words["shell"];
  readonly children: ReactNode;
}

/** Where a screen breaks down, says so instead of leaving the page empty; another screen begins anew. */
export class Broken extends Component<BrokenProps, { readonly reason?: string }> {
  override state: { readonly reason?: string } = {};

  static getDerivedStateFromError(error: unknown): { reason: string } {
    return { reason: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { words, children } = this.props;
    if (this.state.reason === undefined) return children;
    return (
      <div className="stack" role="alert">
        <h1>{words.broken}</h1>
        <p>{words.brokenRemedy}</p>
        <p className="small soft">{this.state.reason}</p>
        <button type="button" className="button main" onClick={() => location.reload()}>
          {words.loadAgain}
        </button>
      </div>
    );
  }
}
