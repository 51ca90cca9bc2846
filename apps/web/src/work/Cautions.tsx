import type { PlacedCaution } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { CautionText } from "./CautionText.tsx";

/** What must be minded here, with who says so and what does as much at another temperature. */
export function Cautions({ cautions }: { readonly cautions: readonly PlacedCaution[] }): ReactNode {
  const { further, formats } = useFurther("work");
  return cautions.map(({ otherTimes = [], ...caution }) => (
    <div key={`${caution.code} ${caution.text}`} className="caution">
      <CautionText caution={caution} />
      {otherTimes.length > 0 && (
        <div className="small soft">
          {further.stove.otherTimes}{" "}
          {otherTimes
            .map(({ tempC, minutes }) => `${formats.number(tempC, 0)} °C ${formats.duration(minutes)}`)
            .join(", ")}
        </div>
      )}
    </div>
  ));
}
