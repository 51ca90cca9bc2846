import { type RefObject, useEffect, useRef, useState } from "react";
import { loadSurely } from "../loading/loadSurely.ts";
import type { Symbols } from "./readSymbol.ts";

/** How far the camera has come. */
export type CameraState = "off" | "asked" | "on" | "refused" | "missing";

/** Pictures are looked at so often. */
const EVERY_MS = 160;

/**
 * Looks through the camera while it is wanted, and tells each number or text that is read. The browser is asked for the camera only
 * then; it is let go as soon as it is not wanted any more.
 */
export function useCamera(
  isWanted: boolean,
  symbols: Symbols,
  onText: (text: string) => void,
): { readonly state: CameraState; readonly video: RefObject<HTMLVideoElement | null> } {
  const video = useRef<HTMLVideoElement>(null);
  const [state, setState] = useState<CameraState>("off");
  const hear = useRef(onText);
  hear.current = onText;
  useEffect(() => {
    if (!isWanted) return undefined;
    let isOver = false;
    let stream: MediaStream | undefined;
    setState("asked");
    const look = async (): Promise<void> => {
      const [{ readSymbol }, taken] = await Promise.all([loadSurely(() => import("./readSymbol.ts")), openCamera()]);
      stream = taken;
      const shown = video.current;
      if (isOver || shown === null) return stop();
      shown.srcObject = taken;
      await shown.play();
      setState("on");
      while (!isOver) {
        const picture = takePicture(shown);
        const text = picture && (await readSymbol(picture, symbols));
        if (text !== undefined && !isOver) hear.current(text);
        await new Promise((resolve) => setTimeout(resolve, EVERY_MS));
      }
    };
    const stop = (): void => {
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
    look().catch((error: unknown) => {
      stop();
      const name = error instanceof DOMException ? error.name : "";
      if (!isOver) setState(name === "NotAllowedError" || name === "SecurityError" ? "refused" : "missing");
    });
    return () => {
      isOver = true;
      stop();
      setState("off");
    };
  }, [isWanted, symbols]);
  return { state, video };
}

function openCamera(): Promise<MediaStream> {
  const devices = navigator.mediaDevices as MediaDevices | undefined;
  if (devices === undefined) return Promise.reject(new DOMException("", "NotFoundError"));
  return devices.getUserMedia({ video: { facingMode: "environment", width: { ideal: 1280 } }, audio: false });
}

const canvas = document.createElement("canvas");

function takePicture(video: HTMLVideoElement): ImageData | undefined {
  const { videoWidth: width, videoHeight: height } = video;
  if (width === 0 || height === 0) return undefined;
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext("2d", { willReadFrequently: true });
  context?.drawImage(video, 0, 0, width, height);
  return context?.getImageData(0, 0, width, height);
}
