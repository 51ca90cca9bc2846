/**
 * How a food must stand in a line for a synonym to hold: "spoon" by the spoon, pinch or without an amount, as spices
 * are; "counted" in pieces; "bunch" by sprig, leaf, bunch or handful, or chopped, as fresh herbs are.
 */
export type Standing = "spoon" | "counted" | "bunch";

/** A name by which recipes mean a food of the table, though the table does not list it. */
export interface FoodSynonym {
  readonly name: string;
  /** Id of a food of the starter table; ignored where the table in use has no such food. */
  readonly food: string;
  readonly when?: Standing;
  readonly english?: "british" | "american";
  /** True where the food found is near but not the same, so that it is offered and never taken silently. */
  readonly near?: boolean;
}

interface SynonymGroup {
  /** Why these names mean these foods. */
  readonly reason: string;
  readonly synonyms: readonly FoodSynonym[];
}

const names = (food: string, list: string, rest: Omit<FoodSynonym, "name" | "food"> = {}): FoodSynonym[] =>
  list.split(";").map((name) => ({ name: name.trim(), food, ...rest }));

/** Common usage of recipes in either English; no source but practice. */
export const FOOD_SYNONYMS: readonly SynonymGroup[] = [
  {
    reason: "A bare name means the plain kind that every kitchen has.",
    synonyms: [
      ...names("butter-salted", "butter", { near: true }),
      ...names("vegetable-oil", "oil; cooking oil; frying oil; neutral oil"),
      ...names("sugar-white", "sugar; white caster sugar; golden caster sugar; fine sugar"),
      ...names("flour-plain", "flour; white plain flour"),
      ...names("vinegar-white", "vinegar; distilled malt vinegar", { near: true }),
      ...names("cheddar", "cheese; grated cheese; hard cheese; mature cheddar; sharp cheddar", { near: true }),
      ...names("yogurt-plain-whole", "yogurt; natural yogurt; plain yogurt; set yogurt"),
      ...names("cream-double", "cream; thick cream", { near: true, english: "british" }),
      ...names("cream-whipping", "cream; thickened cream", { near: true, english: "american" }),
      ...names("mustard-prepared", "mustard; dijon mustard; english mustard", { near: true }),
      ...names("lettuce-iceberg", "lettuce; lettuce leaves", { near: true }),
      ...names("lettuce-cos", "gem lettuce; romaine; cos"),
      ...names("olives-black", "black olives; kalamata olives; olives"),
      ...names("egg-noodles", "noodles; medium egg noodles", { near: true }),
      ...names("tofu-firm", "tofu; beancurd; bean curd", { near: true }),
      ...names("peanuts-roasted", "roasted peanuts; salted peanuts"),
      ...names("peanuts-raw", "peanuts", { near: true }),
      ...names("bread-white", "bread; white sandwich bread; toast", { near: true }),
      ...names("honey", "clear honey; runny honey"),
      ...names("yeast-dried", "yeast; dry yeast; fast action dried yeast; easy-bake yeast"),
      ...names("stock-cube-vegetable", "stock cube; bouillon cube", { near: true }),
      ...names("bacon-back", "bacon; smoked bacon; unsmoked bacon", { english: "british" }),
      ...names("bacon-streaky", "bacon; thick-cut bacon; smoked bacon", { english: "american" }),
      ...names("ham-cooked", "ham; smoked ham; cured ham", { near: true }),
      ...names("peas-frozen", "peas; green peas; garden peas"),
      ...names("sweetcorn-frozen", "sweetcorn; corn; corn kernels"),
      ...names("mushroom-white", "mushrooms; closed-cup mushrooms; portobello mushrooms; flat mushrooms"),
      ...names("cabbage-white", "cabbage; pointed cabbage; hispi cabbage"),
      ...names("raisins", "seedless raisins; currants", { near: true }),
      ...names("dark-chocolate", "chocolate; plain chocolate; dark chocolate; bittersweet chocolate", { near: true }),
      ...names("jam", "raspberry jam; apricot jam; jelly", { near: true }),
      ...names("crackers-plain", "crackers"),
      ...names("beef-mince-standard", "mince; beef mince; ground beef", {}),
      ...names("beef-stewing", "beef; stewing steak; chuck steak; chuck; braising beef; shin of beef", { near: true }),
      ...names("pork-shoulder", "pork; pork shoulder", { near: true }),
      ...names("chicken-whole", "chicken", { near: true, when: "counted" }),
      ...names("chicken-breast", "chicken; chicken pieces; cooked chicken", { near: true }),
      ...names("turkey-breast", "turkey", { near: true }),
      ...names("salmon-fillet", "salmon; salmon steaks"),
      ...names("tuna-tinned-water", "tuna; tinned tuna; canned tuna; albacore tuna", { near: true }),
      ...names("white-fish-frozen", "white fish; fish; fish fillets", { near: true }),
      ...names("anchovies-tinned", "anchovies; anchovy fillets; anchovy"),
      ...names("prawns-frozen", "prawns; raw prawns; king prawns; shrimp"),
      ...names("rice-white-long", "rice; white rice; long-grain rice; cooked rice"),
      ...names("rice-risotto", "arborio rice; arborio; carnaroli rice; paella rice"),
      ...names("lentils-red-dried", "red lentils; split lentils"),
      ...names("lentils-brown-dried", "lentils; puy lentils", { near: true }),
    ],
  },
  {
    reason: "Shapes of pasta made of the same dough.",
    synonyms: [
      ...names(
        "pasta-white",
        "pasta; pasta shapes; rigatoni; farfalle; conchiglie; ziti; orecchiette; orzo; pasta shells",
      ),
      ...names("spaghetti-white", "linguine; spaghettini; angel-hair pasta; vermicelli; bucatini"),
      ...names("pasta-white", "tagliatelle; fettuccine; pappardelle", { near: true }),
      ...names("macaroni-white", "elbow pasta; elbows"),
      ...names("lasagne-sheets", "lasagne; lasagna"),
    ],
  },
  {
    reason: "Sorts of one plant that the table does not tell apart.",
    synonyms: [
      ...names("onion", "onions; white onion; spanish onion; sweet onion; vidalia onion"),
      ...names("spring-onion", "green onions; scallions; salad onions"),
      ...names("potato", "potatoes; waxy potatoes; floury potatoes; baking potatoes; russet potatoes; red potatoes"),
      ...names("potato", "maris piper potatoes; king edward potatoes; yukon gold potatoes"),
      ...names("apple", "bramley apples; granny smith apples; cox apples; gala apples; tart apple; braeburn"),
      ...names("tomato", "tomatoes; plum tomatoes; vine tomatoes; beefsteak tomatoes; roma tomatoes; salad tomatoes"),
      ...names("cherry-tomatoes", "cherry tomato; baby plum tomatoes"),
      ...names("chili-red-fresh", "chilli; red chilli pepper; chilli pepper; bird's eye chilli", { when: "counted" }),
      ...names("chili-green-fresh", "jalapeno; jalapeno pepper; jalapeno chilli; serrano chilli"),
      ...names("pepper-red", "bell pepper; romano pepper; sweet pepper; red sweet pepper; pointed pepper"),
      ...names("pepper-red", "pepper", { when: "counted", near: true }),
      ...names("pepper-red", "pepper; mixed peppers", { when: "bunch", near: true }),
      ...names("orange", "oranges; blood orange"),
      ...names("pear", "conference pear"),
      ...names("pumpkin-squash", "squash; acorn squash", { near: true }),
      ...names("kale", "black kale; tuscan kale; dinosaur kale"),
      ...names("celery", "celery rib; celery heart"),
      ...names("garlic", "garlic clove; clove of garlic"),
      ...names("cucumber", "english cucumber"),
      ...names("mangetout", "snow peas; sugar snaps"),
    ],
  },
  {
    reason: "Salts and sugars that differ in grain or colour only, as a kitchen weighs them.",
    synonyms: [
      ...names("salt", "sea salt; kosher salt; coarse salt; rock salt; fine salt; flaky salt"),
      ...names(
        "sugar-brown",
        "light brown sugar; dark brown sugar; muscovado sugar; demerara sugar; light muscovado sugar",
      ),
      ...names("sugar-brown", "dark muscovado sugar; soft light brown sugar; palm sugar"),
      ...names("icing-sugar", "confectioner's sugar"),
      ...names("golden-syrup", "corn syrup", { near: true }),
    ],
  },
  {
    reason: "A spice by the spoon is ground, a herb by the spoon dried; by the sprig or chopped it is fresh.",
    synonyms: [
      ...names("black-pepper", "pepper; ground pepper; peppercorns; black peppercorns", { when: "spoon" }),
      ...names("coriander-ground", "coriander", { when: "spoon" }),
      ...names("coriander-leaf", "coriander; coriander leaves; cilantro leaves", { when: "bunch" }),
      ...names("coriander-leaf", "coriander", { near: true }),
      ...names("ginger-ground", "ginger; powdered ginger", { when: "spoon" }),
      ...names("ginger", "ginger; root ginger; ginger root; fresh root ginger"),
      ...names("cumin-ground", "cumin", {}),
      ...names("cinnamon-ground", "cinnamon"),
      ...names("cinnamon-stick", "cinnamon stick; cinnamon bark"),
      ...names("thyme-dried", "thyme", { when: "spoon" }),
      ...names("thyme-fresh", "thyme; thyme leaves; lemon thyme", { when: "bunch" }),
      ...names("rosemary-dried", "rosemary", { when: "spoon" }),
      ...names("rosemary-fresh", "rosemary; rosemary leaves; rosemary needles", { when: "bunch" }),
      ...names("oregano-dried", "oregano"),
      ...names("chili-powder", "chilli powder; chile powder"),
      ...names("chili-flakes", "chilli flakes; red chilli flakes; dried chilli; pepper flakes; red pepper flakes"),
      ...names("cayenne", "cayenne; ground red pepper"),
      ...names("paprika", "hungarian paprika; hot paprika"),
      ...names("cardamom", "cardamom pods; green cardamom"),
      ...names("cloves", "whole cloves; clove"),
      ...names("vanilla-extract", "vanilla; vanilla essence; pure vanilla extract"),
      ...names("mixed-herbs-dried", "mixed herbs; italian herbs"),
      ...names("mustard-seed", "mustard seeds; black mustard seeds; yellow mustard seeds"),
      ...names("garlic-powder", "garlic granules"),
    ],
  },
  {
    reason: "Other names of the same food, by language or trade.",
    synonyms: [
      ...names("parmesan", "parmigiano reggiano; parmigiano; grana padano; pecorino"),
      ...names("parmesan", "vegetarian hard cheese; italian hard cheese", { near: true }),
      ...names("bicarbonate-of-soda", "bicarb; bicarbonate"),
      ...names("rapeseed-oil", "canola"),
      ...names("peanut-butter", "crunchy peanut butter; smooth peanut butter"),
      ...names("tomato-puree", "double concentrate tomato puree; tomato concentrate"),
      ...names("tomatoes-tinned", "crushed tomatoes; tinned cherry tomatoes; stewed tomatoes"),
      ...names("passata", "tomato passata; sieved tomato"),
      ...names("pasta-sauce-tomato", "tomato pasta sauce; tomato and basil sauce"),
      ...names("coconut-milk-tinned", "coconut milk; light coconut milk; coconut cream", {}),
      ...names("desiccated-coconut", "coconut; flaked coconut; shredded coconut", { near: true }),
      ...names("gherkins-pickled", "gherkins; cornichons; dill pickles; pickles"),
      ...names("stock-cube-chicken", "chicken stock; chicken broth; hot chicken stock", { near: true }),
      ...names("stock-cube-beef", "beef stock; beef broth", { near: true }),
      ...names("stock-cube-vegetable", "vegetable stock powder; vegetable bouillon powder; stock powder"),
      ...names("vegetable-stock", "vegetable stock; vegetable broth; hot vegetable stock; stock"),
      ...names("soy-sauce", "light soy sauce; dark soy sauce; soya sauce; soy"),
      ...names("curry-paste-mild", "curry paste; korma paste; tikka paste", { near: true }),
      ...names("curry-paste-red", "red curry paste; thai curry paste"),
      ...names("pesto-basil", "pesto; green pesto"),
      ...names("miso", "miso paste; white miso; red miso"),
      ...names("breadcrumbs-dry", "panko; panko breadcrumbs; white breadcrumbs; fine breadcrumbs", {
        near: true,
      }),
      ...names("flour-tortilla", "tortilla; tortilla wraps; wraps; flour wraps"),
      ...names("bread-roll", "burger buns; buns; rolls; hot dog buns", { near: true }),
      ...names("baguette", "french bread; ciabatta", { near: true }),
      ...names("lemon", "lemon zest; lemon rind; lemon peel; lemon wedges"),
      ...names("lime", "lime zest; lime rind; lime wedges"),
      ...names("orange", "orange zest; orange rind; orange peel"),
      ...names("almonds", "flaked almonds; slivered almonds; ground almonds; blanched almonds; whole almonds", {
        near: true,
      }),
      ...names("oats-rolled", "oats; porridge oats; jumbo oats"),
      ...names("polenta", "quick-cook polenta; instant polenta"),
      ...names("sausages-pork", "sausages; pork sausage; pork links; chipolatas"),
      ...names("chorizo", "chorizo sausage; cooking chorizo"),
      ...names("kidney-beans-tinned", "kidney beans; red beans"),
      ...names("butter-beans-tinned", "butter beans"),
      ...names("white-beans-tinned", "white beans; cannellini beans; great northern beans"),
      ...names("navy-beans-dried", "haricot beans; haricots"),
      ...names("chickpeas-tinned", "chickpeas; garbanzo beans; garbanzos"),
      ...names("black-beans-tinned", "black beans"),
      ...names("baked-beans-tinned", "baked beans; beans in tomato sauce"),
      ...names("broad-beans-frozen", "broad beans; fava beans"),
      ...names("soya-mince-dried", "soya mince; tvp; vegetarian mince", { near: true }),
      ...names("goats-cheese", "goat cheese; goat's cheese log"),
      ...names("cream-cheese", "soft cheese; full-fat soft cheese"),
      ...names("cottage-cheese", "low fat cottage cheese"),
      ...names("mozzarella", "buffalo mozzarella; mozzarella cheese"),
      ...names("milk-semi-skimmed", "2% milk; half-fat milk"),
      ...names("milk-whole", "milk; full cream milk; full fat milk"),
      ...names("margarine", "baking spread; vegetable spread; shortening", { near: true }),
      ...names("egg", "eggs; beaten egg; hard-boiled eggs; free-range eggs"),
      ...names("egg-yolk", "yolks; yolk"),
      ...names("egg-white", "whites of egg"),
      ...names("instant-noodles", "ramen; ramen noodles; ramen noodle soup"),
      ...names("rice-noodles", "vermicelli rice noodles; flat rice noodles; rice stick noodles"),
      ...names("glass-noodles", "cellophane noodles; bean thread noodles"),
      ...names("linseed", "flaxseeds; brown flaxseeds; golden linseed"),
      ...names("mixed-vegetables-frozen", "mixed vegetables; frozen veg"),
      ...names("mixed-berries-frozen", "mixed berries; summer berries; frozen fruit"),
    ],
  },
];
