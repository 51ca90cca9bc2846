import type { KitPart } from "halfloaf/dish";
import type { Passage } from "../dish/DishText.ts";
import { type DraftStep, type Field, reckoned, told } from "./DraftStep.ts";
import { matchMakings, type NamedMaking } from "./matchMakings.ts";
import { orderActs } from "./orderActs.ts";
import { readTemperature } from "./readTemperature.ts";
import { readTimes } from "./readTimes.ts";
import { splitActs } from "./splitActs.ts";
import { type StepManner, usualMinutes } from "./usualMinutes.ts";
import { HOT, kitNamed, ON_RING, preheated, type StepKind } from "./workWords.ts";

/** Steps longer than this are done well before the sitting where nothing is done in them. */
const AHEAD_MINUTES = 240;
/** Most steps and most UTF-16 units that are read from one method. */
const MOST_ACTS = 200;
const MOST_LENGTH = 40_000;

const HANDS: Readonly<Record<StepKind, DraftStep["hands"]["value"]>> = {
  wash: "full",
  cut: "full",
  grate: "full",
  mix: "full",
  knead: "full",
  soak: "none",
  rest: "none",
  chill: "none",
  "heat-water": "none",
  boil: "eye",
  simmer: "eye",
  steam: "eye",
  fry: "eye",
  bake: "none",
  grill: "eye",
  microwave: "eye",
  blend: "full",
  drain: "full",
  assemble: "full",
  serve: "full",
};

/** What is used for a kind of work where nothing is named. */
const USUAL_KIT: Readonly<Partial<Record<StepKind, readonly KitPart[]>>> = {
  cut: ["board"],
  grate: ["board"],
  knead: ["board"],
  mix: ["bowl"],
  soak: ["bowl"],
  blend: ["blender"],
  microwave: ["microwave", "bowl"],
  bake: ["oven", "tray"],
  grill: ["oven", "tray"],
};

const STIRRED_ALWAYS =
  /\b(?:stirring|whisking|stir|whisk)\b.{0,20}\b(?:constantly|continuously|all the time|without stopping|the whole time)\b|\bkeep stirring\b/i;
const LIQUID = /\b(?:water|stock|broth|milk|wine|passata|tomatoes|cider|beer)\b/i;
const NIGHT_BEFORE = /\b(?:overnight|the (?:night|day|evening) before|a day ahead)\b/i;

/** What is known of the steps before: what is on the fire and in which vessel. */
interface Context {
  readonly kind?: StepKind;
  readonly vessel?: "pan" | "pot";
}

/**
 * The steps that a method orders, in its order. What the text does not say is reckoned from the kind of work and from the
 * steps before, and is marked with the reason. `makings` are those of the same dish; steps name them by their positions.
 */
export function readMethod(passages: readonly Passage[], makings: readonly NamedMaking[]): DraftStep[] {
  const steps: Omit<DraftStep, "after">[] = [];
  const used = new Set<number>();
  const ids = new Map<string, number>();
  let context: Context = {};
  let length = 0;
  for (const passage of passages) {
    length += passage.text.length;
    if (steps.length >= MOST_ACTS || length > MOST_LENGTH) break;
    for (const act of splitActs(passage.text)) {
      if (steps.length >= MOST_ACTS) break;
      const kind = readKind(act.text, act.kind, context);
      const count = (ids.get(kind.value) ?? 0) + 1;
      ids.set(kind.value, count);
      const kit = readKit(act.text, kind.value, context);
      const handled = matchMakings(act.text, makings, used);
      for (const at of handled) used.add(at);
      const { path, heading } = passage;
      steps.push({
        id: count === 1 ? kind.value : `${kind.value}-${count}`,
        text: act.text,
        path,
        start: act.start,
        end: act.end,
        ...(heading === undefined ? {} : { heading }),
        kind,
        kit,
        ...readLength(act.text, kind),
        hands: readHands(act.text, kind.value),
        ...readHeat(act.text, kind.value),
        makings:
          handled.length > 0
            ? reckoned(handled, "likely", "makings-by-name")
            : reckoned([], "guess", "makings-unnamed"),
      });
      // What is heated empty takes nothing from the fire and puts nothing on it.
      if (preheated(act.text) === undefined) context = nextContext(context, kind.value, kit.value);
    }
  }
  const order = orderActs(steps);
  return steps.map((step, at) => ({ ...step, after: order[at] as Field<readonly string[]> }));
}

function readKind(text: string, kind: StepKind | undefined, { kind: before }: Context): Field<StepKind> {
  if (kind !== undefined) return reckoned(kind, "likely", "kind-by-words");
  if (/\bcook/i.test(text) && kitNamed(text).parts.includes("pan")) return reckoned("fry", "guess", "kind-by-pan");
  // Frying ends where a liquid comes in.
  if (before === "fry" && LIQUID.test(text)) return reckoned("simmer", "guess", "kind-by-liquid");
  if (before !== undefined && HOT.has(before)) return reckoned(before, "guess", "kind-goes-on");
  if (/\bcook/i.test(text)) return reckoned("simmer", "guess", "kind-unsaid");
  return reckoned("mix", "guess", "kind-unsaid");
}

/** Minutes and whether it is done ahead. */
function readLength(text: string, { value: kind, reason }: Field<StepKind>): Pick<DraftStep, "minutes" | "ahead"> {
  const times = readTimes(text);
  const fixed = times.reduce((sum, { minutes }) => sum + minutes, 0);
  const doubt =
    times.find((time) => time.reason !== undefined)?.reason ?? (times.length > 1 ? "times-added" : undefined);
  const how = mannerOf(text, reason);
  const minutes: DraftStep["minutes"] =
    times.length === 0
      ? reckoned(usualMinutes(kind, how), "guess", how === "whole" ? "minutes-usual" : `minutes-usual-${how}`)
      : doubt === undefined
        ? told({ fixed, perPortion: 0 })
        : reckoned(
            { fixed, perPortion: 0 },
            doubt === "time-overnight" || doubt === "time-vague" ? "guess" : "likely",
            doubt,
          );
  if (NIGHT_BEFORE.test(text)) return { minutes, ahead: told(true) };
  const isLong = HANDS[kind] === "none" && kind !== "bake" && minutes.value.fixed >= AHEAD_MINUTES;
  return {
    minutes,
    ahead: isLong ? reckoned(true, "likely", "ahead-by-length") : reckoned(false, "likely", "ahead-unsaid"),
  };
}

function mannerOf(text: string, kindReason: string | undefined): StepManner {
  if (preheated(text) !== undefined) return "preheat";
  if (/\bbring\b.{0,60}\bto (?:a|the) (?:\w+ )?(?:boil|simmer)[\s.,]*$/i.test(text)) return "boil-up";
  const goesOn = kindReason === "kind-goes-on" || kindReason === "kind-by-liquid";
  return goesOn && !/\b(?:cook|until|bubble)\b/i.test(text) ? "adding" : "whole";
}

function readHands(text: string, kind: StepKind): DraftStep["hands"] {
  if (preheated(text) !== undefined) return reckoned("none", "likely", "hands-by-kind");
  return STIRRED_ALWAYS.test(text) ? told("full") : reckoned(HANDS[kind], "likely", "hands-by-kind");
}

function readHeat(text: string, kind: StepKind): Pick<DraftStep, "tempC"> {
  const read = readTemperature(text);
  if (read === undefined || !(HOT.has(kind) || kind === "heat-water")) return {};
  const sure = read.reason === "oven-word" || read.reason === "degrees-unnamed" ? "guess" : "likely";
  return { tempC: read.reason === undefined ? told(read.tempC) : reckoned(read.tempC, sure, read.reason) };
}

function readKit(text: string, kind: StepKind, { vessel }: Context): DraftStep["kit"] {
  const { parts, hasPan } = kitNamed(text);
  const empty = preheated(text);
  if (empty !== undefined) return told(["oven"]);
  if (kind === "heat-water")
    return parts.includes("kettle") || (!hasPan && !parts.includes("pot"))
      ? kitOf(["kettle"], parts)
      : kitOf(["ring", "pot"], parts);
  if (ON_RING.has(kind) && !parts.includes("oven") && !parts.includes("microwave")) {
    const [named] = parts.filter((part) => part === "pan" || part === "pot");
    return kitOf(
      ["ring", named ?? (hasPan ? panFor(kind, vessel) : (vessel ?? (kind === "fry" ? "pan" : "pot")))],
      parts,
    );
  }
  if (kind === "drain") return kitOf(vessel === undefined ? [] : [vessel], parts);
  if (hasPan && vessel !== undefined) return kitOf([vessel], parts);
  const usual = USUAL_KIT[kind] ?? [];
  const isHeld = parts.some((part) => !["oven", "microwave", "ring"].includes(part));
  return kitOf(isHeld ? usual.filter((part) => part === "oven" || part === "microwave") : usual, parts);
}

function panFor(kind: StepKind, vessel: Context["vessel"]): "pan" | "pot" {
  return kind === "fry" ? "pan" : (vessel ?? "pot");
}

/** What is named and what goes with it; sure only where all of it is named. */
function kitOf(usual: readonly KitPart[], named: readonly KitPart[]): DraftStep["kit"] {
  const all = [...new Set([...usual, ...named])];
  if (all.length === named.length && named.length > 0) return told(all);
  return reckoned(all, "likely", all.length === 0 ? "kit-unsaid" : "kit-by-kind");
}

function nextContext({ kind: before, vessel }: Context, kind: StepKind, kit: readonly KitPart[]): Context {
  const held = kit.find((part) => part === "pan" || part === "pot") as "pan" | "pot" | undefined;
  // What is cut or mixed on the side doesn't take away what stands on the fire.
  const isBeside = ["cut", "grate", "wash", "heat-water"].includes(kind);
  const stays = kind === "heat-water" && held === "pot" ? "boil" : isBeside ? before : kind;
  const next = held ?? (kind === "bake" || kind === "serve" ? undefined : vessel);
  return { ...(stays === undefined ? {} : { kind: stays }), ...(next === undefined ? {} : { vessel: next }) };
}
