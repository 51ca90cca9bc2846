import { contentOfLabel, type PricedLine } from "@halfloaf/reading";
import { type ReactNode, useState } from "react";
import { WriteFood } from "../../foods/WriteFood.tsx";
import { NumberField } from "../../kitchen/fields/NumberField.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { ChooseFood } from "../ChooseFood.tsx";
import { tellContent } from "./tellContent.ts";
import type { Settling } from "./useSettling.ts";

interface NewPackProps {
  readonly line: PricedLine;
  readonly settling: Settling;
  readonly onMade: () => void;
}

/** What makes a new pack of a line: the food in it, and how much it holds where the line does not tell. */
export function NewPack({ line, settling, onMade }: NewPackProps): ReactNode {
  const { further, formats } = useFurther("readPrices");
  const [food, setFood] = useState("");
  const [massG, setMassG] = useState<number>();
  const told = line.candidate?.content ?? contentOfLabel(line.text);
  const isMass = massG !== undefined && massG > 0;
  const { priced: words } = further;
  return (
    <div className="stack tight">
      <div className="fields">
        <ChooseFood text={line.text} value={food} onChange={setFood} />
        {told === undefined ? (
          <NumberField label={words.grams} value={undefined} onChange={setMassG} />
        ) : (
          <p>{tellContent(told, formats)}</p>
        )}
      </div>
      <WriteFood />
      <div>
        <button
          type="button"
          className="button main"
          disabled={food === "" || (told === undefined && !isMass)}
          onClick={() => settling.makePack(line, food, told === undefined ? massG : undefined) && onMade()}
        >
          {words.make}
        </button>
      </div>
    </div>
  );
}
