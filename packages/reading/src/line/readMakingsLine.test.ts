import { describe, expect, it } from "vitest";
import type { MakingsLine, Measure, MeasurePart } from "./makingsLine.ts";
import { MOST_CHARACTERS, readMakingsLine } from "./readMakingsLine.ts";

function making(line: string): MakingsLine {
  const read = readMakingsLine(line);
  if (read.kind !== "making") throw new Error(`${line} was read as ${read.kind}`);
  return read;
}

const writeParts = (parts: readonly MeasurePart[]) =>
  parts.map(({ value, unit }) => [value, unit].filter((each) => each !== undefined).join(" ")).join(" + ");
const writeMeasure = ({ parts, upTo, manner }: Measure) =>
  [...manner, writeParts(parts), ...(upTo ? ["to", writeParts(upTo)] : [])].join(" ").trim();

/** The amounts of a line in short: tellings parted by "=", what each holds after "of". */
function amountOf(line: string, choice = 0): string {
  const amount = making(line).choices[choice]?.amount;
  if (!amount) return "none";
  const told = amount.told.map(writeMeasure).join(" = ");
  return amount.each.length > 0 ? `${told} of ${amount.each.map(writeMeasure).join(" = ")}` : told;
}

const namesOf = (line: string) => making(line).choices.map(({ name }) => name.text);
const texts = (told: readonly { text: string }[]) => told.map(({ text }) => text);

describe("amounts", () => {
  it.each([
    ["1 1/2 cups rice", "1.5 cup"],
    ["1½ cups rice", "1.5 cup"],
    ["1-1/2 cups rice", "1.5 cup"],
    ["1 & 1/2 cups rice", "1.5 cup"],
    ["1 and a half cups rice", "1.5 cup"],
    ["⅝ cup rice", "0.625 cup"],
    ["1⁄4 cup rice", "0.25 cup"],
    ["1,5 dl milk", "1.5 decilitre"],
    ["1,200 g potatoes", "1200 gram"],
    [".5 l water", "0.5 litre"],
    ["2-3 tbsp oil", "2 tablespoon to 3 tablespoon"],
    ["2 -3 tbsp oil", "2 tablespoon to 3 tablespoon"],
    ["2–3 tbsp oil", "2 tablespoon to 3 tablespoon"],
    ["2 to 3 tbsp oil", "2 tablespoon to 3 tablespoon"],
    ["2 or 3 eggs", "2 to 3"],
    ["between 2 and 3 eggs", "2 to 3"],
    ["1 to 1 1/2 cups water", "1 cup to 1.5 cup"],
    ["350g to 400g rice", "350 gram to 400 gram"],
    ["half a dozen eggs", "6"],
    ["a couple of carrots", "2"],
    ["two-thirds of a cup of milk", `${2 / 3} cup`],
    ["twenty-four olives", "24"],
    ["1/2 a lemon", "0.5"],
    ["a quarter of a tin of tomatoes", "0.25 tin"],
  ])("a number is read as it is meant: %s", (line, amount) => expect(amountOf(line)).toBe(amount));

  it.each([
    ["150g/5oz mushrooms", "150 gram = 5 ounce"],
    ["500ml/18fl oz stock", "500 millilitre = 18 fluidOunce"],
    ["1kg/2lb 2oz apples", "1 kilogram = 2 pound + 2 ounce"],
    ["1.5kg-2kg/3lb 5oz-4lb 8oz chicken", "1.5 kilogram to 2 kilogram = 3 pound + 5 ounce to 4 pound + 8 ounce"],
    ["300ml (½ pint) milk", "300 millilitre = 0.5 pint"],
    ["1 cup (2 sticks) butter", "1 cup = 2 stick"],
    ["4 oz/115g/1 cup rice", "4 ounce = 115 gram = 1 cup"],
    ["1 cup or 240 ml milk", "1 cup = 240 millilitre"],
    ["5 potatoes (about 2 pounds)", "5 = 2 pound"],
    ["1 squash, about 1 1/2 pounds", "1 = 1.5 pound"],
  ])("what is told again is one amount: %s", (line, amount) => expect(amountOf(line)).toBe(amount));

  it.each([
    ["2 x 400 g tins tomatoes", "2 tin of 400 gram"],
    ["1 x 400g/14oz tin tomatoes", "1 tin of 400 gram = 14 ounce"],
    ["1 (8 ounce) package soft cheese", "1 package of 8 ounce"],
    ["1 14-ounce can beans", "1 can of 14 ounce"],
    ["1 - 14 oz can beans", "1 can of 14 ounce"],
    ["two 400g tins of beans", "2 tin of 400 gram"],
    ["2 tins (400g each) beans", "2 tin of 400 gram"],
    ["2 tins beans, 400 g each", "2 tin of 400 gram"],
    ["400g tin tomatoes", "tin of 400 gram"],
    ["3/4 of a 400g tin of beans", "0.75 tin of 400 gram"],
    ["5cm/2in piece ginger", "piece of 5 centimetre = 2 inch"],
    ["4 (6-oz) salmon fillets", "4 of 6 ounce"],
    ["4 chicken breasts (about 150g each)", "4 of 150 gram"],
    ["1 3-to-4-pound chicken", "1 of 3 pound to 4 pound"],
  ])("packs and pieces keep apart what each holds: %s", (line, amount) => expect(amountOf(line)).toBe(amount));

  it.each([
    ["3-4 heaped tbsp oil", "heaped 3 tablespoon to 4 tablespoon"],
    ["large pinch salt", "large pinch"],
    ["a good pinch of saffron", "good 1 pinch"],
    ["splash of milk", "splash"],
    ["small bunch mint", "small bunch"],
    ["1 T sugar", "1 tablespoon"],
    ["1 t sugar", "1 teaspoon"],
    ["8 oz. soft cheese", "8 ounce"],
    ["8 fl. oz. milk", "8 fluidOunce"],
    ["2 garlic cloves", "2 clove"],
    ["2 cloves garlic", "2 clove"],
    ["4 cloves, crushed", "4"],
    ["2 bay leaves", "2"],
    ["1 cup plus 2 tablespoons flour", "1 cup + 2 tablespoon"],
    ["2lb 4oz potatoes", "2 pound + 4 ounce"],
    ["a few sprigs of thyme", "sprig"],
  ])("units are read with what is said of them: %s", (line, amount) => expect(amountOf(line)).toBe(amount));

  it.each(["2% milk", "80% lean ground beef", "potatoes, cut into 2 cm cubes", "oil for 2 pans"])(
    "a number that says no amount gives none: %s",
    (line) => expect(amountOf(line)).toBe("none"),
  );

  it.each([
    ["Butter, 50 g", "50 gram", "Butter"],
    ["flour 200g", "200 gram", "flour"],
    ["Eggs: 2", "2", "Eggs"],
  ])("an amount may stand last, and is then only likely: %s", (line, amount, name) => {
    expect(amountOf(line)).toBe(amount);
    expect(namesOf(line)).toEqual([name]);
    expect(making(line).choices[0].amount?.sure).toBe("likely");
  });

  it("an amount beside several pieces that may be of each or of all is a guess", () => {
    expect(making("4 pork cutlets (4 ounces)").choices[0].amount).toMatchObject({
      sure: "guess",
      reason: "each-or-total",
    });
  });
});

describe("names", () => {
  it.each([
    ["1 large onion, finely chopped", ["onion"]],
    ["2 tablespoons finely chopped fresh dill", ["dill"]],
    ["1/2 teaspoon freshly ground black pepper", ["black pepper"]],
    ["500g lean minced beef", ["minced beef"]],
    ["2 tbsp butter (or margarine)", ["butter", "margarine"]],
    ["1 cup chicken or vegetable stock", ["chicken stock", "vegetable stock"]],
    ["100 g chicken or smoked tofu", ["chicken", "smoked tofu"]],
    ["1 red or yellow pepper", ["red pepper", "yellow pepper"]],
    ["1 cup fresh or frozen peas", ["peas"]],
    ["1 cup farro, spelt or barley", ["farro", "spelt", "barley"]],
    ["6 tablespoons cold, unsalted butter", ["unsalted butter"]],
    ["1 onion peeled and cut into chunks", ["onion"]],
    ["oil for frying", ["oil"]],
    ["soy sauce to serve", ["soy sauce"]],
    ["3 cups half and half", ["half and half"]],
    ["2 large eggs", ["eggs"]],
    ["1 tsp hot sauce", ["hot sauce"]],
    ["500 ml hot vegetable stock", ["vegetable stock"]],
  ])("the name is the food without what is said of it: %s", (line, names) => expect(namesOf(line)).toEqual(names));

  it("alternatives have their own amounts", () => {
    const line = "1 tbsp butter or 2 tbsp olive oil";
    expect([amountOf(line), amountOf(line, 1)]).toEqual(["1 tablespoon", "2 tablespoon"]);
    expect(amountOf("2 teaspoons fresh basil, chopped (or 1/2 tsp dried)", 1)).toBe("0.5 teaspoon");
  });

  it("a name joined by 'and' gives both sides, since it may be two foods", () => {
    const [choice] = making("salt and freshly ground pepper").choices;
    expect(choice.name).toMatchObject({ text: "salt and pepper", sure: "likely", reason: "may-be-two-foods" });
    expect(texts(choice.together ?? [])).toEqual(["salt", "pepper"]);
  });

  it.each([
    ["juice of half a lime", "juice", "lime"],
    ["Finely grated zest and juice of 2 limes", "Finely grated zest and juice", "limes"],
    ["1 lemon, juice only", "juice only", "lemon"],
  ])("a part of a fruit is kept apart from it: %s", (line, part, name) => {
    const [choice] = making(line).choices;
    expect([choice.part?.text, choice.name.text]).toEqual([part, name]);
  });
});

describe("what else is said", () => {
  it("preparation, size, state, purpose, taste, option and notes are told apart", () => {
    const line = making("1 small fresh chilli, deseeded and sliced, to serve (optional), such as a long red one");
    expect(line.choices[0].size?.text).toBe("small");
    expect(texts(line.choices[0].states)).toEqual(["fresh"]);
    expect(texts(line.preparation)).toEqual(["deseeded and sliced"]);
    expect(line.purpose?.text).toBe("to serve");
    expect(line.optional?.text).toBe("optional");
    expect(texts(line.notes)).toEqual(["such as a long red one"]);
    expect(making("salt, to taste").toTaste?.text).toBe("to taste");
  });

  it("the purpose of what is extra is not that of the making", () => {
    const line = making("50 g butter, melted, plus a little extra for greasing");
    expect(line.purpose).toBeUndefined();
    expect(texts(line.notes)).toEqual(["plus a little extra for greasing"]);
  });

  it.each([
    ["For the sauce:", "For the sauce"],
    ["For the topping", "For the topping"],
    ["Dressing:", "Dressing"],
    ["To finish (optional)", "To finish (optional)"],
    ["To serve", "To serve"],
  ])("a heading is no making: %s", (line, heading) => {
    expect(readMakingsLine(line)).toMatchObject({ kind: "heading", heading: { text: heading } });
  });

  it("a making that is told by when it is wanted is no heading", () => {
    expect(making("to serve lime wedges").kind).toBe("making");
  });

  it("a heading may stand before a making in one line", () => {
    const line = making("For the dressing: 2 tbsp olive oil");
    expect([line.heading?.text, line.choices[0].name.text]).toEqual(["For the dressing", "olive oil"]);
  });

  it.each(["", "   ", "---", "\u200b\u200e", "<br>"])("a line that says nothing is empty: %j", (line) => {
    expect(readMakingsLine(line)).toEqual({ kind: "empty", issues: [] });
  });

  it("a bullet or a list's number says nothing", () => {
    expect([namesOf("• 2 onions"), amountOf("1) 3 eggs"), amountOf("- 2 eggs")]).toEqual([["onions"], "3", "2"]);
  });

  it("markup is not passed on", () => {
    const line = making('1 cup stock (<a href="https://example.org/x">see note</a>) <script>alert(1)</script>');
    expect(JSON.stringify(line)).not.toMatch(/[<>]|href/);
  });

  it("a line too long is read as far as lines are and says so", () => {
    const line = readMakingsLine(`2 onions, ${"chopped ".repeat(200)}`);
    expect(line.issues).toEqual([
      {
        code: "line-too-long",
        path: [],
        expected: `at most ${MOST_CHARACTERS} characters`,
        received: "1610 characters",
      },
    ]);
    expect(line).toMatchObject({ kind: "making", choices: [{ name: { text: "onions" } }] });
  });
});
