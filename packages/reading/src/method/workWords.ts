import type { KitPart, Step } from "halfloaf/dish";

export type StepKind = Step["kind"];

/** The words of the work that tell its kind, in the form in which a cook is told what to do. Ours, no source. */
const VERBS: Readonly<Partial<Record<StepKind, string>>> = {
  wash: "wash rinse scrub clean wipe",
  cut: "chop slice dice cut peel mince shred trim halve quarter core deseed seed crush cube julienne carve snip tear destone stone pit shell skin crumble bash pare segment",
  grate: "grate zest",
  mix: "mix combine whisk beat fold toss cream sift mash rub coat dress work dissolve loosen thin knock",
  knead: "knead",
  soak: "soak marinate marinade steep",
  rest: "rest prove proof infuse cool thaw defrost",
  chill: "chill refrigerate freeze",
  boil: "boil parboil blanch",
  simmer: "simmer stew poach braise bubble",
  steam: "steam",
  fry: "fry sauté saute brown soften sweat sear toast stir-fry pan-fry deep-fry shallow-fry melt caramelise caramelize wilt scramble griddle temper crisp",
  bake: "bake roast",
  grill: "grill broil barbecue char",
  microwave: "microwave",
  blend: "blend blitz puree purée liquidise liquidize whizz process pulse",
  drain: "drain strain sieve",
  assemble:
    "assemble fill spread layer roll wrap arrange stuff shape form line grease butter oil spoon divide top flatten press",
  serve: "serve garnish sprinkle scatter drizzle plate ladle eat enjoy finish dish heap pile share strew",
};

/** Words of the work that tell no kind by themselves. */
const WEAK =
  "add stir put place pour tip cover season return remove transfer turn set take bring continue cook heat lower reduce check make keep repeat use lay drop throw uncover lift push squeeze break crack open taste adjust warm raise increase switch allow leave let prepare measure weigh pop discard reserve gather dust flip preheat pre-heat";

const KIND_OF_VERB = new Map<string, StepKind | "weak">([
  ...WEAK.split(" ").map((verb) => [verb, "weak"] as const),
  ...Object.entries(VERBS).flatMap(([kind, verbs]) =>
    verbs.split(" ").map((verb) => [verb, kind as StepKind] as const),
  ),
]);

/** The kind of work that a word orders; "weak" for one that orders work of no kind by itself, undefined for any other word. */
export function kindOfVerb(word: string): StepKind | "weak" | undefined {
  return KIND_OF_VERB.get(word.toLowerCase());
}

/** True for a word that brings further food into what is being cooked. */
export function isAdding(word: string): boolean {
  return /^(?:add|stir|tip|pour|return|crack|break|drop)$/i.test(word);
}

/** Phrases that tell the kind whatever the word of the work: by what it is done in, or by what is done to water. */
const PLACES: readonly (readonly [RegExp, StepKind])[] = [
  [/\b(?:boil|fill|put on|switch on|heat) (?:the|a|your) (?:full )?kettle\b|\bin (?:the|a) kettle\b/i, "heat-water"],
  [
    /\b(?:bring|heat|boil) (?:(?:a|the|some|plenty of|[\d.,]+ ?\p{L}+ of|a litre of) )?(?:(?:large|big|medium|small|full|deep) )?(?:(?:pan|pot|saucepan|pan full|potful)(?:ful)? of )?(?:(?:lightly|well|generously) )?(?:(?:salted|cold|fresh) )?water\b/iu,
    "heat-water",
  ],
  [/\bunder (?:the|a) (?:hot |preheated |medium )?(?:grill|broiler)\b/i, "grill"],
  [/\bin (?:the|a) microwave\b/i, "microwave"],
  [/\b(?:in|into|to) (?:the|a|your) (?:(?:hot|preheated|moderate|warm|cool) )?oven\b/i, "bake"],
];

/** Phrases that tell the kind where the word of the work doesn't, the first that fits. */
const PHRASES: readonly (readonly [RegExp, StepKind])[] = [
  [/\b(?:in|into|to) (?:the|a|your) (?:fridge|refrigerator|freezer)\b/i, "chill"],
  [/\bbring\b.{0,100}\bto (?:a|the) (?:gentle |slow |bare )?simmer\b/i, "simmer"],
  [/\bbring\b.{0,100}\bto (?:a|the) (?:rolling |full |gentle )?boil\b|\bcome to the boil\b/i, "boil"],
  [/\b(?:heat|warm|melt)\b.{0,30}\b(?:oil|butter|ghee|fat|lard|dripping|margarine)\b/i, "fry"],
  [/\b(?:let|allow|leave)\b.{0,60}\b(?:bubble|simmer|cook)\b/i, "simmer"],
  [/\b(?:leave|let|put)\b.{0,60}\b(?:soak|marinate|steep)\b/i, "soak"],
  [/\bcover(?:ed)?\b.{0,40}\bcook\b|\bcook\b.{0,60}\b(?:low|lowest|covered|lid)\b/i, "simmer"],
  [
    /\b(?:leave|let|allow|stand|set)\b.{0,60}\b(?:rest|stand|cool|rise|prove|sit|swell|thicken|infuse|aside|thaw)\b|\bleave\b/i,
    "rest",
  ],
  [/\bstir-?fr(?:y|ied)\b/i, "fry"],
  [/\bsimmer(?:ing)?\b/i, "simmer"],
];

/** Words that say an oven or a grill is heated while nothing is in it yet. */
const PREHEAT =
  /\b(?:pre-?heat|heat|warm|set|turn on|switch on|light)\b (?:up )?(?:the |your |an? )?(?:fan |conventional |electric )?(oven|grill|broiler)\b/i;

/** The part that is heated empty; undefined where none is. */
export function preheated(text: string): "bake" | "grill" | undefined {
  const part = PREHEAT.exec(text)?.[1]?.toLowerCase();
  return part === undefined ? undefined : part === "oven" ? "bake" : "grill";
}

/** The kind that the place tells in which something is done, whatever is said to be done. */
export function kindOfPlace(text: string): StepKind | undefined {
  return PLACES.find(([pattern]) => pattern.test(text))?.[1];
}

/** The kind that a phrase tells. */
export function kindOfPhrase(text: string): StepKind | undefined {
  return PHRASES.find(([pattern]) => pattern.test(text))?.[1];
}

/** Words for what is held or filled. A pan of water is a pot; "pan" alone is told apart by what is done in it. */
const KIT: readonly (readonly [RegExp, KitPart])[] = [
  [
    /\b(?:frying|sauté|saute|griddle|omelette|pancake|grill) ?pans?\b|\bskillets?\b|\bwoks?\b|\bfrypans?\b|\bkarahi\b|\bgriddle\b/i,
    "pan",
  ],
  [
    /\bsaucepans?\b|\bpots?\b|\bstock ?pots?\b|\bdutch oven\b|\bcasserole\b|\bpans? of\b[^,;]{0,20}\bwater\b|\bcooking pots?\b/i,
    "pot",
  ],
  [
    /\b(?:roasting|baking|loaf|cake|muffin|pie|sandwich|tart|bun|flan) (?:tins?|pans?|trays?|sheets?|dish(?:es)?|moulds?)\b|\bovenproof (?:dish|pan)\b|\btrays?\b|\bgratin dish\b|\bramekins?\b/i,
    "tray",
  ],
  [/\bmicrowave\b/i, "microwave"],
  [/\bkettle\b/i, "kettle"],
  [/\b(?:chopping |cutting |floured |work)? ?(?:boards?|surface)\b/i, "board"],
  [/\b(?:bowls?|basin|jug|tub)\b/i, "bowl"],
  [/\bblenders?\b|\bfood processor\b|\bliquidi[sz]er\b|\bhand blender\b|\bblitz\b/i, "blender"],
  [/(?<!dutch )\boven\b/i, "oven"],
];

/** The kit that a text names, each part once. `hasPan` is true where it names a pan of no kind. */
export function kitNamed(text: string): { readonly parts: readonly KitPart[]; readonly hasPan: boolean } {
  const serving = text.replace(
    /\b(?:into|in|between|among) (?:(?:warm|warmed|serving|soup|deep|four|two|three|six|the|individual) )*bowls?\b/gi,
    " ",
  );
  const parts = KIT.filter(([pattern]) => pattern.test(serving)).map(([, part]) => part);
  return {
    parts: [...new Set(parts)],
    hasPan: /\bpans?\b/i.test(text) && !parts.some((part) => part === "pan" || part === "pot"),
  };
}

/** Kinds that need a ring under them. */
export const ON_RING: ReadonlySet<StepKind> = new Set(["boil", "simmer", "steam", "fry"]);
/** Kinds that bring food to heat or keep it there. */
export const HOT: ReadonlySet<StepKind> = new Set(["boil", "simmer", "steam", "fry", "bake", "grill", "microwave"]);
