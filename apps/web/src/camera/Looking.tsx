import type { ReactNode } from "react";
import "./camera.css";
import type { Symbols } from "./readSymbol.ts";
import { useCamera } from "./useCamera.ts";

interface LookingProps {
  readonly looksFor: Symbols;
  readonly words: {
    readonly look: string;
    readonly stop: string;
    /** What the picture is called to those who don't see it. */
    readonly picture: string;
    readonly hold: string;
    readonly refused: string;
    readonly missing: string;
  };
  readonly isLooking: boolean;
  readonly onLooking: (isLooking: boolean) => void;
  readonly onText: (text: string) => void;
  /** What is told of the text that was read last. */
  readonly children?: ReactNode;
}

/** Looks through the camera for bars or a code, once that is asked, and says why it can't. */
export function Looking({ looksFor, words, isLooking, onLooking, onText, children }: LookingProps): ReactNode {
  const { state, video } = useCamera(isLooking, looksFor, onText);
  const isOff = state === "refused" || state === "missing";
  const look = (isWanted: boolean): void => {
    onLooking(false);
    // What was refused is asked for anew.
    if (isWanted) setTimeout(() => onLooking(true));
  };
  return (
    <>
      {isLooking && (
        <video ref={video} className="camera" hidden={isOff} muted playsInline aria-label={words.picture} />
      )}
      <div className="row">
        <button type="button" className="button main" onClick={() => look(!isLooking || isOff)}>
          {isLooking && !isOff ? words.stop : words.look}
        </button>
      </div>
      <div role="status" className="stack tight">
        {isOff && <p className="caution">{words[state]}</p>}
        {state === "on" && <p className="small soft">{words.hold}</p>}
        {children}
      </div>
    </>
  );
}
