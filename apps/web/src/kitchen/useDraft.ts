import { useState } from "react";

/** What a form holds while it is filled in; begins anew where what is saved has changed, by an undo for example. */
export function useDraft<Draft>(saved: Draft): {
  readonly draft: Draft;
  readonly setDraft: (draft: Draft) => void;
  /** Changes with what is saved: the key for fields that keep their own text. */
  readonly version: string;
} {
  const version = JSON.stringify(saved);
  const [held, setHeld] = useState({ version, draft: saved });
  if (held.version !== version) setHeld({ version, draft: saved });
  return {
    draft: held.version === version ? held.draft : saved,
    setDraft: (draft) => setHeld({ version, draft }),
    version,
  };
}
