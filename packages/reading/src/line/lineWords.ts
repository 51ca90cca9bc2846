/**
 * The words by which a makings line is taken apart, by what they do there. They are ordinary English of the kitchen;
 * a word stands here for its role in every line, never for one line.
 */
const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/).filter((word) => word !== ""));

/** How large a piece is. */
export const SIZES = words(`
  large medium small big little tiny jumbo medium-size medium-sized medium-large small-sized large-sized
  good-sized good-size average-sized smallish largish bite-size bite-sized xl`);

/**
 * Said of a food before its name without making another food of it: its state, its keeping, praise. A preserved food
 * (dried, frozen, tinned, ground) is another food to the table, so the finder is told these words as well.
 */
export const STATES = words(`
  fresh ripe raw cold cool hot warm lukewarm tepid boiling iced good best fine quality good-quality best-quality
  high-quality top-quality rich strong homemade home-made organic free-range unwaxed unpeeled young tender mature
  lean thick thin nice favourite favorite your store-bought shop-bought ready-made leftover left-over day-old stale
  unripe whole dry pure real authentic very other assorted additional extra prepared dried frozen canned tinned
  ground crusty room-temperature bottled jarred plump uncooked
  boneless skinless skin-on bone-in seedless shell-on skinned boned`);

/** Adverbs that do not end in -ly; those that do are known by their ending. */
export const ADVERBS = words(
  "well very thin thick fine extra lengthways lengthwise crosswise roughly coarse halfway fein grob sehr",
);

/** Preparations that do not end in -ed, and those of German lines. */
export const IRREGULAR_PREPARATIONS = words(`
  cut torn beaten split ground drawn slit julienne broken
  gehackt gewürfelt geschnitten gerieben geraspelt gehobelt abgetropft zerdrückt gepresst geschält gewaschen halbiert geviertelt
  püriert zerlassen geschmolzen verquirlt zerbröselt gezupft entkernt`);

/** Ends in -ed or like a preparation, but names a kind of food. */
export const KINDS_IN_ED = words(`
  red seed seeds bread shortbread cornbread linseed rapeseed aniseed flaxseed seaweed reed feed mustard-seed
  smoked condensed evaporated unsalted salted sweetened unsweetened pickled cured powdered rolled baked refried
  skimmed semi-skimmed distilled desiccated self-raising mixed seasoned preserved candied crystallised crystallized
  clarified soured reduced flavoured flavored enriched fermented puffed jugged potted corned streaked sun-dried
  sundried air-dried freeze-dried malted clotted cultured processed fortified fried refined unrefined hulled
  granulated textured spiced flaked breaded unbleached bleached frosted iced glazed pearled cracked strained
  black-eyed red-skinned part-baked unflavored unflavoured curried undyed`);

/** Ends in -ly but is no adverb. */
export const NOT_ADVERBS = words("jelly curly early");

/** Meats that are another food when minced; "minced beef" is the British name of ground beef. */
export const MINCED_MEATS = words("beef lamb pork turkey veal chicken meat venison soya quorn steak mutton");

/** A food with one of these heads is a liquid: its ounces are fluid, and "hot" is said of its state only. */
export const LIQUIDS = words(`
  water milk cream buttermilk stock broth bouillon juice wine beer ale stout cider oil vinegar rum brandy vodka gin
  whisky whiskey sherry port liqueur coffee tea lemonade cola syrup sauce passata cordial champagne prosecco
  vermouth sake mirin marsala squash espresso tequila bourbon`);

/** After these words the name is over. */
export const NAME_ENDS = words(`
  for to such preferably plus cut at as if about from like until with without into see per each weighing including
  depending made available ideally optional approximately approx around total divided enough only
  eg ie using use according both because but although though when which that where not then`);

/** Begin what a making is for. */
export const PURPOSES = words(`
  serve garnish decorate finish dust dusting grease greasing fry frying brush brushing drizzle drizzling sprinkle
  sprinkling serving garnishing decorating deep-frying deep-fry shallow-frying coat coating glaze glazing season
  seasoning dip dipping top topping accompany line lining roll rolling scatter`);

/** Parts of a fruit that a line asks for in place of the fruit. */
export const FRUIT_PARTS = words("juice zest rind peel juices grated-zest seeds pulp flesh");

/** Counted parts that stand after the food they are of: "garlic cloves", "thyme sprigs". */
export const TRAILING_PARTS = words(`
  clove cloves sprig sprigs stalk stalks stick sticks rib ribs leaf leaves head heads bulb bulbs bunch bunches slice
  slices rasher rashers spear spears stem stems ear ears floret florets strip strips handful handfuls`);

/** Foods whose name ends in a counted part all the same. */
export const WHOLE_WITH_PART = words(
  "bay curry whole gelatine gelatin lime vine fish bread breadstick short spare drum pop candle chop match lolly chinese baby",
);

/** Adjectives that name no food by themselves, so that "white or brown breadcrumbs" shares its last word. */
export const KIND_ADJECTIVES = words(`
  white brown red green yellow black orange purple pink golden dark light pale sweet sour bitter hot mild medium plain
  strong smooth crunchy soft hard semi-skimmed skimmed full-fat low-fat whole wholemeal granary smoked unsmoked
  streaky back flat curly caster granulated demerara muscovado icing single double whipping heavy soured clotted
  self-raising self-rising all-purpose natural greek english french wholegrain long-grain short-grain flat-leaf
  italian low-sodium homemade spring savoy dry`);

/** Nouns that are foods of their own, but tell kinds apart before a head such as "stock" or "oil". */
export const KIND_NOUNS = words(`
  vegetable chicken beef veal fish lamb pork turkey ham olive sunflower rapeseed canola groundnut peanut corn sesame
  walnut hazelnut almond coconut soya soy oat rice cider wine sherry malt balsamic bread cake pastry dijon basmati
  jasmine cos romaine iceberg cherry plum button chestnut portobello cremini kidney cannellini borlotti haricot navy
  pinto runner broad cheddar parmesan swiss lemon lime apple pineapple grapefruit tomato flour mustard poppy`);

/** Heads that take another word before them to say which: "chicken or vegetable stock" is two stocks. */
export const SHARED_HEADS = words(`
  stock broth bouillon oil vinegar flour sugar wine milk cream sauce mustard rice cheese bread breadcrumbs crumbs beans
  bean pepper peppers onion onions lettuce mince stock-cube cube cubes yoghurt yogurt juice seeds seed nuts paste
  powder syrup salt tomatoes mushrooms potatoes apples noodles pasta lentils cabbage chocolate raisins rum liqueur
  chilli chillies chili chilies chiles wraps tortillas rolls buns sausages sausage bacon parsley extract essence zest
  breast breasts thighs fillets fillet`);

/** Marks that begin a line of a list. */
export const LINE_MARKS: ReadonlySet<string> = new Set("- * • · ‣ ◦ ▪ ▢ ☐ □ – # _ + > |".split(" "));

/** After "or" these begin a remark, not another food. */
export const REMARKS_AFTER_OR = words(`
  more less so to as enough until similar other another equivalent your any a-little whatever use substitute just
  thereabouts if however even fresh-equivalent`);
