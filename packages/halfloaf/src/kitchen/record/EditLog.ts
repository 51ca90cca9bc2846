import type { Issue, Parsed } from "../../quantity/index.ts";
import { compareWritten } from "./compareEvents.ts";
import { type Edit, fromThings, type Thing, thingOf } from "./edit.ts";
import type { EditedKitchen } from "./kitchenRecord.ts";
import { settleTwins } from "./settleTwins.ts";

/** The kitchen as edited, with the edits that had to be passed over for it to be one. */
export interface KitchenAsEdited {
  readonly kitchen: EditedKitchen;
  readonly passedOver: readonly PassedOver[];
}

/** An edit that does not fit what others have done to the kitchen, and what it would have broken. */
export interface PassedOver {
  readonly edit: Edit;
  readonly issue: Issue;
}

/**
 * The edits of a kitchen. Of each thing the one written last counts, whatever order they arrive in; where the kitchen would
 * be none with it, the one written before it does. So all devices with the same edits have the same kitchen.
 */
export class EditLog {
  private readonly byId = new Map<string, Edit>();
  /** Edits of each thing, the one written last at the end. */
  private readonly byThing = new Map<string, readonly Edit[]>();
  private told: Parsed<KitchenAsEdited> | undefined;

  /** Takes edits in; those that are there already change nothing. Gives how many were new. */
  add(edits: Iterable<Edit>): number {
    let added = 0;
    for (const edit of edits) {
      const known = this.byId.get(edit.id);
      if (known !== undefined && settleTwins(known, edit) !== "second") continue;
      if (known !== undefined) this.forget(known);
      this.byId.set(edit.id, edit);
      this.byThing.set(edit.thing, [...(this.byThing.get(edit.thing) ?? []), edit].sort(compareWritten));
      added++;
    }
    if (added > 0) this.told = undefined;
    return added;
  }

  private forget({ id, thing }: Edit): void {
    this.byThing.set(
      thing,
      (this.byThing.get(thing) ?? []).filter((each) => each.id !== id),
    );
  }

  /** All edits, in the order in which they came. */
  all(): Edit[] {
    return [...this.byId.values()];
  }

  /** The edit of an id; undefined where there is none. */
  find(id: string): Edit | undefined {
    return this.byId.get(id);
  }

  /** The edit of a thing that was written last; undefined where it was never set. */
  latestOf(thing: string): Edit | undefined {
    return this.byThing.get(thing)?.at(-1);
  }

  /** The edit of the same thing that was written before this one; undefined for its first. */
  before({ thing, id }: Edit): Edit | undefined {
    const edits = this.byThing.get(thing) ?? [];
    return edits[edits.findIndex((each) => each.id === id) - 1];
  }

  /** The kitchen, or all that keeps it from being one whatever is passed over. */
  kitchen(): Parsed<KitchenAsEdited> {
    this.told ??= this.tell();
    return this.told;
  }

  private tell(): Parsed<KitchenAsEdited> {
    const standing = new Map([...this.byThing].map(([thing, edits]) => [thing, [...edits]]));
    const passedOver: PassedOver[] = [];
    for (;;) {
      const read = fromThings(thingsOf(standing));
      if (read.ok) return { ok: true, value: { kitchen: read.value, passedOver } };
      const found = passOver(read.issues, standing);
      if (found.length === 0) return read;
      passedOver.push(...found);
    }
  }
}

function thingsOf(standing: ReadonlyMap<string, readonly Edit[]>): Map<string, Thing> {
  const things = new Map<string, Thing>();
  for (const [thing, edits] of standing) {
    const latest = edits.at(-1);
    if (latest?.value === undefined) continue;
    things.set(thing, latest.at === undefined ? { value: latest.value } : { value: latest.value, at: latest.at });
  }
  return things;
}

/** Takes from each thing that is at fault the edit written last, where there is one before it or it can be done without. */
function passOver(issues: readonly Issue[], standing: Map<string, Edit[]>): PassedOver[] {
  const found: PassedOver[] = [];
  const done = new Set<string>();
  for (const issue of issues) {
    const thing = standing.has(thingOf(issue)) ? thingOf(issue) : lastTaken(thingOf(issue), standing);
    const edit = thing === undefined || done.has(thing) ? undefined : standing.get(thing)?.pop();
    if (thing !== undefined) done.add(thing);
    if (edit !== undefined) found.push({ edit, issue });
  }
  return found;
}

/** Of the elements of a list, the one taken away last: a list may not be as short as it is now. */
function lastTaken(list: string, standing: ReadonlyMap<string, readonly Edit[]>): string | undefined {
  const taken = [...standing].flatMap(([thing, edits]) => {
    const latest = edits.at(-1);
    return thing.startsWith(`${list}/`) && latest !== undefined && latest.value === undefined ? [latest] : [];
  });
  return taken.sort(compareWritten).at(-1)?.thing;
}
