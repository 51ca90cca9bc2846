import type { FoodTable } from "../../food/index.ts";
import { applyMovement, type Doubt, isAtLeast, type LotState, type Movement } from "../../stores/index.ts";
import type { EventOf, RecordEvent } from "./event.ts";
import {
  type AcceptedMenu,
  type BegunAhead,
  type DoneCooking,
  type EatenPlate,
  type EventFault,
  keyOfBegun,
  keyOfMissing,
  keyOfPlanned,
  keyOfSitting,
  type LotToCount,
  type MadeTrip,
  type MissingPack,
  type RecordState,
  type SeenPrice,
  type SittingNews,
} from "./recordState.ts";

/** A draft as it was: copies of its maps, and how long its lists were, which only ever grow. */
export interface SavedDraft {
  readonly maps: DraftMaps;
  readonly lengths: readonly number[];
}

interface DraftMaps {
  readonly lots: Map<string, LotState>;
  readonly toCount: Map<string, LotToCount>;
  readonly cookings: Map<string, DoneCooking>;
  readonly begun: Map<string, BegunAhead>;
  readonly sittings: Map<string, SittingNews>;
  readonly missing: Map<string, MissingPack>;
  readonly ratings: Map<string, number>;
  readonly planned: Map<string, string>;
  readonly boughtAt: Map<string, string>;
}

/** A state in the making: events are applied in their order. It can be saved, and go back to what was saved. */
export class RecordDraft {
  private readonly foods: FoodTable;
  private maps: DraftMaps = {
    lots: new Map(),
    toCount: new Map(),
    cookings: new Map(),
    begun: new Map(),
    sittings: new Map(),
    missing: new Map(),
    ratings: new Map(),
    planned: new Map(),
    boughtAt: new Map(),
  };
  private readonly plates: EatenPlate[] = [];
  private readonly trips: MadeTrip[] = [];
  private readonly prices: SeenPrice[] = [];
  private readonly menus: AcceptedMenu[] = [];
  private readonly faults: EventFault[] = [];

  constructor(foods: FoodTable) {
    this.foods = foods;
  }

  save(): SavedDraft {
    return { maps: copyMaps(this.maps), lengths: this.lists.map(({ length }) => length) };
  }

  /** Goes back to what was saved, or to the start. */
  restore(saved?: SavedDraft): void {
    this.maps = saved === undefined ? new RecordDraft(this.foods).maps : copyMaps(saved.maps);
    for (const [at, list] of this.lists.entries())
      list.length = saved === undefined ? 0 : (saved.lengths[at] as number);
  }

  /** A copy that later events don't change. */
  snapshot(): Omit<RecordState, "withdrawn"> {
    return {
      ...copyMaps(this.maps),
      plates: this.plates.slice(),
      trips: this.trips.slice(),
      prices: this.prices.slice(),
      menus: this.menus.slice(),
      faults: this.faults.slice(),
    };
  }

  private get lists(): unknown[][] {
    return [this.plates, this.trips, this.prices, this.menus, this.faults];
  }

  apply(event: RecordEvent): void {
    switch (event.kind) {
      case "eaten":
        this.eat(event);
        break;
      case "used":
        this.use(event);
        break;
      case "cooked":
        this.cook(event);
        break;
      case "begun":
        this.begin(event);
        break;
      case "counted":
        this.count(event);
        break;
      case "bought":
        this.buy(event);
        break;
      case "stocked":
      case "moved":
      case "opened":
      case "labelled":
      case "wasted":
        this.move(event, event);
        break;
      case "skipped":
      case "guest":
      case "ate-out":
        this.hear(event);
        break;
      case "trip":
        this.travel(event);
        break;
      case "price-seen":
        this.see(event);
        break;
      case "at-shelf":
        this.lookAtShelf(event);
        break;
      case "rated":
        this.maps.ratings.set(event.dish, event.points);
        break;
      case "menu-accepted":
        this.menus.push({ event: event.id, on: event.on, week: event.week });
        break;
      case "withdrawn":
        break;
    }
  }

  /** Books a movement and what of it is in doubt. */
  private move(event: RecordEvent, movement: Movement): void {
    const { lots, doubts } = applyMovement(movement, this.maps.lots, this.foods);
    for (const lot of lots) this.maps.lots.set(lot.id, lot);
    for (const doubt of doubts) this.doubt(event, doubt);
  }

  private doubt(event: RecordEvent, { code, key, expected, received, lot, shortG }: Doubt): void {
    this.fault(event, code, key, expected, received);
    if (shortG === undefined) return;
    const known = this.maps.toCount.get(lot);
    const next: LotToCount =
      known === undefined
        ? { lot, shortG, since: event.on, events: [event.id] }
        : { ...known, shortG: known.shortG + shortG, events: [...known.events, event.id] };
    this.maps.toCount.set(lot, next);
  }

  private fault({ id }: RecordEvent, code: string, key: string, expected: string, received: string): void {
    this.faults.push({ event: id, issue: { code, path: [key], expected, received } });
  }

  private buy(event: EventOf<"bought">): void {
    const { planned, lot, shop } = event;
    if (shop !== undefined) this.maps.boughtAt.set(lot, shop);
    const key = planned === undefined ? undefined : keyOfPlanned(planned.week, planned.lot);
    const twin = key === undefined ? undefined : this.maps.planned.get(key);
    // Two people may both have ticked the pack, or two were bought: both count until somebody withdraws one.
    if (twin !== undefined) this.fault(event, "bought-twice", "planned", `a pack that did not become ${twin}`, lot);
    else if (key !== undefined) this.maps.planned.set(key, lot);
    if (event.pack !== undefined) this.seePack(event.pack);
    this.move(event, event);
  }

  private use(event: EventOf<"used">): void {
    this.book(event, { lot: event.lot }, event);
  }

  private eat(event: EventOf<"eaten">): void {
    for (const plate of event.plates) {
      const { lot, massG } = plate;
      this.book(event, plate, { kind: "used", on: event.on, lot, massG });
    }
  }

  /** What leaves a lot to be eaten, and its plate at the cost of what was booked. */
  private book(
    event: EventOf<"used" | "eaten">,
    { eater, lot: id }: { readonly eater?: string | undefined; readonly lot: string },
    movement: Movement,
  ): void {
    const before = this.maps.lots.get(id);
    this.move(event, movement);
    const after = this.maps.lots.get(id);
    const sitting = event.kind === "eaten" ? event.sitting : undefined;
    this.serve(event, before, after, { ...(sitting && { sitting }), ...(eater !== undefined && { eater }) });
  }

  /** The plate that a lot lost, if it did. */
  private serve(
    { id, on }: RecordEvent,
    before: LotState | undefined,
    after: LotState | undefined,
    whose: Pick<EatenPlate, "sitting" | "eater"> = {},
  ): void {
    if (before === undefined || after === undefined || !(after.leftG < before.leftG)) return;
    const massG = before.leftG - after.leftG;
    const { cooked, food } = before;
    this.plates.push({
      event: id,
      on,
      lot: before.id,
      ...whose,
      ...(food !== undefined && { food }),
      ...(cooked !== undefined && { dish: cooked.dish, portions: massG / cooked.portionG }),
      massG,
      costMinor: before.leftMinor - after.leftMinor,
      atLeast: isAtLeast(before),
    });
  }

  private cook(event: EventOf<"cooked">): void {
    const isNew = !this.maps.lots.has(event.lot);
    this.move(event, event);
    const lot = this.maps.lots.get(event.lot);
    if (!isNew || lot?.cooked === undefined) return;
    const { on, dish, portions, sitting, batch, steps, by, atMs } = event;
    this.maps.cookings.set(event.lot, {
      event: event.id,
      on,
      lot: event.lot,
      dish,
      portions,
      ...(sitting !== undefined && { sitting }),
      ...(batch !== undefined && { batch }),
      costMinor: lot.broughtMinor,
      atLeast: lot.cooked.atLeast,
      ...(steps !== undefined && { pace: { ...(by !== undefined && { by }), atMs, steps } }),
    });
  }

  private begin({ id, on, dish, servedOn, sitting, step }: EventOf<"begun">): void {
    const begun = { event: id, on, dish, servedOn, sitting, ...(step !== undefined && { step }) };
    this.maps.begun.set(keyOfBegun(begun), begun);
  }

  private count(event: EventOf<"counted">): void {
    const before = this.maps.lots.get(event.lot);
    this.move(event, event);
    if (before === undefined) return;
    this.maps.toCount.delete(event.lot);
    if (event.as === "used") this.serve(event, before, this.maps.lots.get(event.lot));
  }

  private hear(event: EventOf<"skipped" | "guest" | "ate-out">): void {
    const { on, sitting } = event;
    const key = keyOfSitting(on, sitting);
    const known = this.maps.sittings.get(key) ?? {
      on,
      sitting,
      allAway: false,
      away: [],
      guestPortions: 0,
      ateOutMinor: 0,
    };
    this.maps.sittings.set(key, hearOf(known, event));
  }

  private travel({ id, on, shop, fareMinor }: EventOf<"trip">): void {
    this.trips.push({ event: id, on, shop, fareMinor });
  }

  private lookAtShelf({ id, trip, shop, pack, isThere }: EventOf<"at-shelf">): void {
    const key = keyOfMissing({ trip, shop, pack });
    if (isThere) this.maps.missing.delete(key);
    else this.maps.missing.set(key, { event: id, trip, shop, pack });
  }

  /** Who has a pack in the hand, or its price before the eyes, found it. */
  private seePack(pack: string): void {
    for (const [key, missing] of this.maps.missing) if (missing.pack === pack) this.maps.missing.delete(key);
  }

  private see({ id, on, pack, priceMinor, offer, massG, at }: EventOf<"price-seen">): void {
    this.seePack(pack);
    this.prices.push({
      event: id,
      pack,
      priceMinor,
      ...(offer !== undefined && { offer }),
      ...(massG !== undefined && { massG }),
      seen: { on, at },
    });
  }
}

/** A sitting after one more piece of news; what is told twice counts once, but for guests, who come on top. */
function hearOf(known: SittingNews, event: EventOf<"skipped" | "guest" | "ate-out">): SittingNews {
  if (event.kind === "guest") return { ...known, guestPortions: known.guestPortions + event.portions };
  const cost = event.kind === "ate-out" ? event.costMinor : undefined;
  const ateOutMinor = cost === undefined ? known.ateOutMinor : known.ateOutMinor + cost;
  if (event.eater === undefined) return { ...known, ateOutMinor, allAway: true };
  const away = known.away.includes(event.eater) ? known.away : [...known.away, event.eater];
  return { ...known, ateOutMinor, away };
}

function copyMaps({
  lots,
  toCount,
  cookings,
  begun,
  sittings,
  missing,
  ratings,
  planned,
  boughtAt,
}: DraftMaps): DraftMaps {
  return {
    lots: new Map(lots),
    toCount: new Map(toCount),
    cookings: new Map(cookings),
    begun: new Map(begun),
    sittings: new Map(sittings),
    missing: new Map(missing),
    ratings: new Map(ratings),
    planned: new Map(planned),
    boughtAt: new Map(boughtAt),
  };
}
