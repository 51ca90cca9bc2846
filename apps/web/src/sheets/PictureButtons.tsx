import { type ReactNode, useState } from "react";
import { useFurther } from "../words/useFurther.ts";
import { drawPng } from "./drawPng.ts";
import { saveFile } from "./saveFile.ts";

/** A picture that can be saved. */
export interface PictureButtonsProps {
  readonly name: string;
  readonly file: string;
  /** Draws the picture as SVG; undefined where there is nothing to draw. */
  readonly draw: () => string | undefined | Promise<string | undefined>;
}

/** Saves a picture as SVG or as PNG. */
export function PictureButtons({ name, file, draw }: PictureButtonsProps): ReactNode {
  const { further } = useFurther("sheets");
  const [told, setTold] = useState("");
  const save = async (form: "svg" | "png"): Promise<void> => {
    setTold("");
    const svg = await draw();
    if (svg === undefined) setTold(further.sheets.nothing);
    else if (form === "svg") saveFile(`${file}.svg`, svg, "image/svg+xml");
    else
      await drawPng(svg).then(
        (png) => saveFile(`${file}.png`, png, "image/png"),
        () => setTold(further.sheets.noPng),
      );
  };
  return (
    <div className="row">
      <span>{name}</span>
      {(["svg", "png"] as const).map((form) => (
        <button key={form} type="button" className="button" onClick={() => void save(form)}>
          <span className="unseen">{name} </span>
          {form.toUpperCase()}
        </button>
      ))}
      <span role="status">{told}</span>
    </div>
  );
}
