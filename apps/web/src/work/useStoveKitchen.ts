import { type Kitchen, toPace } from "halfloaf/kitchen";
import { pacesOf } from "halfloaf/kitchen/record";
import { useMemo } from "react";
import { useDevice, useKitchen } from "../kitchen/KitchenProvider.tsx";

/** The kitchen by whose pace it is cooked here: that of who uses this device, where they showed one, else that of all. */
export function useStoveKitchen(): Kitchen {
  const { view } = useKitchen();
  const { device } = useDevice();
  return useMemo(() => {
    const { kitchen, edited, state } = view;
    const own = pacesOf(edited, state).find(({ by }) => by !== undefined && by === device.by);
    return own === undefined ? kitchen : { ...kitchen, pace: { ...kitchen.pace, ...toPace(own.learned) } };
  }, [view, device.by]);
}
