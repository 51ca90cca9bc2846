import { NO_FINDINGS, withFindings } from "@halfloaf/reading";
import {
  DIETS,
  EU_ALLERGENS,
  findFoodCalled,
  foodName,
  HYGIENE_CLASSES,
  NUTRIENT_NAMES,
  type Nutrient,
  type OwnFood,
  PLACES,
} from "halfloaf/food";
import { type FormEvent, type ReactNode, useState } from "react";
import { Link, useLocation } from "wouter";
import { ChoiceField } from "../kitchen/fields/ChoiceField.tsx";
import { NumberField } from "../kitchen/fields/NumberField.tsx";
import { TextField } from "../kitchen/fields/TextField.tsx";
import { TickField } from "../kitchen/fields/TickField.tsx";
import { Issues } from "../kitchen/Issues.tsx";
import { useKitchen } from "../kitchen/KitchenProvider.tsx";
import { newId } from "../kitchen/newId.ts";
import { Unfolding } from "../kitchen/Unfolding.tsx";
import { useSaving } from "../kitchen/useSaving.ts";
import { choicesOf } from "../mapping/CsvFields.tsx";
import { Allowed } from "../sharing/Allowed.tsx";
import { RoleNote } from "../sharing/RoleNote.tsx";
import { useFurther } from "../words/useFurther.ts";
import { Contradictions } from "./Contradictions.tsx";
import { type FoodDraft, findProblems, NEW_FOOD, toDraft, toOwnFood } from "./FoodDraft.ts";
import { useFigures } from "./useFigures.ts";
import { useProblemWords } from "./useProblemWords.ts";

/** What labels print, in the order of Regulation (EU) 1169/2011, Annex XV; salt stands behind it. */
const ON_LABELS: readonly Nutrient[] = [
  "energyKj",
  "energyKcal",
  "fatG",
  "saturatesG",
  "carbohydrateAvailableG",
  "sugarsG",
  "fibreG",
  "proteinG",
];

/** Writes a food of one's own down from its label, or changes it. */
export default function FoodForm({ id }: { readonly id?: string }): ReactNode {
  const { further } = useFurther("foods");
  const { view } = useKitchen();
  const before = view.edited.foods.find((food) => food.id === id);
  if (id !== undefined && before === undefined)
    return (
      <div className="stack">
        <h1>{further.foods.title}</h1>
        <p>{further.foods.lost}</p>
        <Link href="/dishes/foods">{further.foods.all}</Link>
      </div>
    );
  return <Fields before={before} />;
}

function Fields({ before }: { readonly before: OwnFood | undefined }): ReactNode {
  const { further, language } = useFurther("foods");
  const { view } = useKitchen();
  const [, go] = useLocation();
  const speech = { english: view.edited.english, language };
  const { foodForm: words } = further;
  const [draft, setDraft] = useState<FoodDraft>(() =>
    before === undefined ? { ...NEW_FOOD, source: words.sourceUsual } : toDraft(before, speech),
  );
  // What is missing is told once somebody wants to save, and from then on as it is filled in.
  const [wasAsked, setAsked] = useState(false);
  const { issues, save } = useSaving();
  const tellProblem = useProblemWords();
  const problems = findProblems(draft);
  const isTaken =
    before === undefined && findFoodCalled(view.tables.foods, draft.name, speech.english, language) !== undefined;
  const sound = problems.length === 0 ? toOwnFood(draft, before?.id ?? "new", speech, before) : undefined;
  const keep = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    if (sound === undefined) return;
    const food = before === undefined ? { ...sound, id: newId(draft.name, view.tables.foods.keys(), "food") } : sound;
    if (save((edited) => ({ ...edited, ...withFindings(edited, { ...NO_FINDINGS, foods: [food] }) })))
      go(`/dishes/foods/${food.id}`);
  };
  return (
    <form className="stack" onSubmit={keep}>
      <Link href={before === undefined ? "/dishes/foods" : `/dishes/foods/${before.id}`} className="way-back">
        {further.cancel}
      </Link>
      <h1>
        {before === undefined ? words.title : words.change(foodName(before, speech.english, language) ?? before.id)}
      </h1>
      <p className="soft">{words.about}</p>
      <Facts draft={draft} onDraft={setDraft} />
      {isTaken && <p className="small soft">{words.nameTaken(draft.name.trim())}</p>}
      <AllergenTicks draft={draft} onDraft={setDraft} />
      <KeepingDays draft={draft} onDraft={setDraft} />
      <FigureFields draft={draft} onDraft={setDraft} />
      {sound !== undefined && <Contradictions composition={sound.composition} />}
      <div role="status">
        {wasAsked && problems.length > 0 && (
          <div className="issues">
            <p>{further.issues.title}</p>
            <ul>
              {problems.map((problem) => (
                <li key={tellProblem(problem)}>{tellProblem(problem)}</li>
              ))}
            </ul>
          </div>
        )}
      </div>
      <Issues issues={issues} />
      <p className="small soft">{further.foods.labelFirst}</p>
      <Allowed to="edited" otherwise={<RoleNote />}>
        <div>
          <button type="submit" className="button main">
            {further.save}
          </button>
        </div>
      </Allowed>
    </form>
  );
}

interface DraftProps {
  readonly draft: FoodDraft;
  readonly onDraft: (draft: FoodDraft) => void;
}

function Facts({ draft, onDraft }: DraftProps): ReactNode {
  const { further } = useFurther("foods");
  const { foodForm: words } = further;
  const open = ["", words.choose] as const;
  const diets = DIETS.map((each) => [each, further.diets[each]] as const);
  const hygiene = HYGIENE_CLASSES.map((each) => [each, words.hygieneKinds[each]] as const);
  return (
    <>
      <div className="fields">
        <TextField label={words.name} value={draft.name} onChange={(name) => onDraft({ ...draft, name })} />
        <ChoiceField
          label={words.group}
          value={draft.group}
          choices={[open, ...choicesOf(words.groups)]}
          onChange={(group) => onDraft({ ...draft, group })}
        />
        <ChoiceField
          label={words.diet}
          value={draft.diet}
          choices={[open, ...diets]}
          onChange={(diet) => onDraft({ ...draft, diet })}
        />
        <ChoiceField
          label={words.hygiene}
          value={draft.hygiene}
          choices={[open, ...hygiene]}
          onChange={(kind) => onDraft({ ...draft, hygiene: kind })}
        />
        <NumberField
          label={words.refuse}
          value={draft.refusePct}
          onChange={(refusePct) => onDraft({ ...draft, refusePct })}
        />
        <NumberField
          label={words.density}
          value={draft.densityGPerMl}
          onChange={(densityGPerMl) => onDraft({ ...draft, densityGPerMl })}
        />
        <NumberField label={words.piece} value={draft.pieceG} onChange={(pieceG) => onDraft({ ...draft, pieceG })} />
      </div>
      <TickField
        label={words.counts}
        isTicked={draft.vegetableOrFruit}
        onChange={(vegetableOrFruit) => onDraft({ ...draft, vegetableOrFruit })}
      />
    </>
  );
}

function AllergenTicks({ draft, onDraft }: DraftProps): ReactNode {
  const { further } = useFurther("foods");
  const { foodForm: words } = further;
  const tick = (allergen: FoodDraft["allergens"][number], isTicked: boolean): void => {
    const allergens = EU_ALLERGENS.filter((each) => (each === allergen ? isTicked : draft.allergens.includes(each)));
    // Wheat is a cereal with gluten.
    const wheat = draft.wheat && allergens.includes("gluten");
    onDraft({ ...draft, allergens, wheat, noAllergens: draft.noAllergens && !isTicked });
  };
  return (
    <fieldset className="group">
      <legend>{words.allergens}</legend>
      <div className="ticks">
        {EU_ALLERGENS.map((each) => (
          <TickField
            key={each}
            label={further.allergens[each]}
            isTicked={draft.allergens.includes(each)}
            onChange={(isTicked) => tick(each, isTicked)}
          />
        ))}
        {draft.allergens.includes("gluten") && (
          <TickField
            label={words.wheat}
            isTicked={draft.wheat}
            onChange={(wheat) => onDraft({ ...draft, wheat, noAllergens: false })}
          />
        )}
      </div>
      <TickField
        label={words.noAllergens}
        isTicked={draft.noAllergens}
        onChange={(isNone) =>
          onDraft(
            isNone ? { ...draft, allergens: [], wheat: false, noAllergens: true } : { ...draft, noAllergens: false },
          )
        }
      />
    </fieldset>
  );
}

function KeepingDays({ draft, onDraft }: DraftProps): ReactNode {
  const { further, words: base } = useFurther("foods");
  const { foodForm: words, foods: texts } = further;
  return (
    <fieldset className="group">
      <legend>{words.keeping}</legend>
      <div className="fields two">
        {(["unopened", "opened"] as const).flatMap((when) =>
          PLACES.map((place) => (
            <NumberField
              key={`${when} ${place}`}
              label={words.place(texts[when], base.stores.places[place])}
              value={draft[when][place]}
              onChange={(days) => onDraft({ ...draft, [when]: { ...draft[when], [place]: days } })}
              isWhole
            />
          )),
        )}
      </div>
    </fieldset>
  );
}

function FigureFields({ draft, onDraft }: DraftProps): ReactNode {
  const { further } = useFurther("foods");
  const { title } = useFigures();
  const { foodForm: words } = further;
  const field = (name: Nutrient): ReactNode => (
    <NumberField
      key={name}
      label={title(name)}
      value={draft.figures[name]}
      onChange={(figure) => onDraft({ ...draft, figures: { ...draft.figures, [name]: figure } })}
    />
  );
  const others = NUTRIENT_NAMES.filter((name) => !ON_LABELS.includes(name) && name !== "sodiumMg");
  return (
    <>
      <fieldset className="group">
        <legend>{words.figures}</legend>
        <div className="fields two">
          {ON_LABELS.map(field)}
          <NumberField label={words.salt} value={draft.saltG} onChange={(saltG) => onDraft({ ...draft, saltG })} />
        </div>
        <TextField label={words.source} value={draft.source} onChange={(source) => onDraft({ ...draft, source })} />
      </fieldset>
      <Unfolding className="fold sheet" summary={<h2>{words.further}</h2>}>
        <div className="fields fold-body">{others.map(field)}</div>
      </Unfolding>
    </>
  );
}
