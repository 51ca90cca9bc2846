import type { Kit } from "halfloaf/kitchen";
import type { ReactNode } from "react";
import { useFurther } from "../words/useFurther.ts";
import { NumberField } from "./fields/NumberField.tsx";
import { TickField } from "./fields/TickField.tsx";

const COUNTS = ["rings", "pans", "pots", "potPortions", "boards", "fridgeLitres", "freezerLitres"] as const;
const THERE = ["oven", "microwave", "kettle", "blender"] as const;

type Count = (typeof COUNTS)[number];

/** The kit while the form is filled in: a count may be missing or no number yet. */
export type KitDraft = Omit<Kit, Count> & Readonly<Record<Count, number | undefined>>;

interface KitFormProps {
  readonly kit: KitDraft;
  readonly onChange: (kit: KitDraft) => void;
}

/** What there is to cook with. */
export function KitForm({ kit, onChange }: KitFormProps): ReactNode {
  const { further } = useFurther("kitchen");
  return (
    <div className="stack tight">
      <div className="fields two">
        {COUNTS.map((part) => (
          <NumberField
            key={part}
            label={further.kitchen[part]}
            value={kit[part]}
            onChange={(count) => onChange({ ...kit, [part]: count })}
            isWhole
          />
        ))}
      </div>
      <div className="ticks">
        {THERE.map((part) => (
          <TickField
            key={part}
            label={further.kitchen[part]}
            isTicked={kit[part]}
            onChange={(isThere) => onChange({ ...kit, [part]: isThere })}
          />
        ))}
      </div>
    </div>
  );
}
