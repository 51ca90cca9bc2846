import { type ReactNode, useId, useState } from "react";
import { Link } from "wouter";
import { FileDrop } from "../../source/FileDrop.tsx";
import { Undo } from "../../today/Undo.tsx";
import { useFurther } from "../../words/useFurther.ts";
import { useFigures } from "../useFigures.ts";
import { type FoodsGiven, type NotGiven, sortFiles, sortText } from "./FoodsSource.ts";
import { MappedTable } from "./MappedTable.tsx";
import { OwnFoodsRead } from "./OwnFoodsRead.tsx";
import { TableReading } from "./TableReading.tsx";

/** Reads foods in: an official table, whose figures are taken food by food, or own foods that another kitchen saved. */
export default function ReadFoods(): ReactNode {
  const { further } = useFurther("foods", "mapping");
  // The names of components are waited for here: what waits further down would begin anew with all that was chosen.
  useFigures();
  const [given, setGiven] = useState<FoodsGiven | NotGiven>();
  const { foodRead: words } = further;
  const again = (): void => setGiven(undefined);
  return (
    <div className="stack">
      <div className="row spread">
        <Link href="/dishes/foods" className="way-back">
          {further.foods.all}
        </Link>
        {given !== undefined && <Undo />}
      </div>
      <h1>{words.title}</h1>
      {given !== undefined && isGiven(given) ? (
        <>
          <Given given={given} />
          <div>
            <button type="button" className="button" onClick={again}>
              {further.source.again}
            </button>
          </div>
        </>
      ) : (
        <Source refused={given} onGiven={setGiven} />
      )}
    </div>
  );
}

function isGiven(given: FoodsGiven | NotGiven): given is FoodsGiven {
  return given.kind === "own" || given.kind === "json" || given.kind === "csv" || given.kind === "table";
}

function Given({ given }: { readonly given: FoodsGiven }): ReactNode {
  if (given.kind === "own") return <OwnFoodsRead content={given.content} />;
  if (given.kind === "table") return <MappedTable text={given.text} name={given.name} />;
  return <TableReading source={given} />;
}

interface SourceProps {
  readonly refused: NotGiven | undefined;
  readonly onGiven: (given: FoodsGiven | NotGiven) => void;
}

function Source({ refused, onGiven }: SourceProps): ReactNode {
  const { further } = useFurther("foods");
  const field = useId();
  const [text, setText] = useState("");
  const { foodRead: words } = further;
  const told: Readonly<Record<Exclude<NotGiven["kind"], "large">, string>> = {
    "not-one": words.notOne,
    "json-broken": words.json,
    "download-part": words.downloadPart,
    failed: further.source.failed,
  };
  const take = async (files: readonly File[]): Promise<void> => onGiven(await sortFiles(files));
  return (
    <>
      <p className="soft">{words.about}</p>
      <label className="field" htmlFor={field}>
        {words.text}
        <span className="small soft">{words.textHint}</span>
        <textarea id={field} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <div>
        <button
          type="button"
          className="button main"
          disabled={text.trim() === ""}
          onClick={() => onGiven(sortText(text))}
        >
          {further.source.read}
        </button>
      </div>
      <FileDrop
        label={words.file}
        accept=".csv,.tsv,.txt,.json,text/csv,text/plain,application/json"
        onFiles={(files) => void take(files)}
      />
      <p role="status">
        {refused !== undefined && (refused.kind === "large" ? words.tooLarge(refused.name) : told[refused.kind])}
      </p>
    </>
  );
}
