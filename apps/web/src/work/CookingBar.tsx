import type { ReactNode } from "react";
import { Awaited } from "../loading/Awaited.tsx";
import { lazily } from "../loading/lazily.ts";
import { useCooking } from "./useCooking.ts";

const CookingLine = lazily(() => import("./CookingLine.tsx"));

/** What goes on by itself while another screen is open, and the way back to the stove; nothing while nothing is cooked. */
export default function CookingBar(): ReactNode {
  const running = useCooking();
  if (running?.begunMs === undefined) return null;
  return (
    <Awaited isBeside>
      <CookingLine running={running} />
    </Awaited>
  );
}
