import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useState,
  useSyncExternalStore,
} from "react";
import { loadSurely } from "../loading/loadSurely.ts";
import { findLanguage } from "../words/languages.ts";
import { useWords } from "../words/WordsContext.tsx";
import { type Device, readDevice, writeDevice } from "./device.ts";
import { fetchStarter } from "./fetchStarter.ts";
import type { KitchenSession, KitchenView, OpeningFault } from "./KitchenSession.ts";

/** How far the opening of a kitchen has come. */
export type Opening =
  | { readonly kind: "opening" }
  | { readonly kind: "none" }
  | { readonly kind: "open"; readonly session: KitchenSession; readonly view: KitchenView }
  | { readonly kind: "refused"; readonly fault: OpeningFault };

interface Kitchens {
  readonly opening: Opening;
  /** Makes a kitchen from a backup or a kitchen's file and opens it; false where that holds none. */
  readonly make: (content: unknown) => Promise<boolean>;
  readonly device: Device;
  /** Sets what this device remembers; another kitchen in it is opened. */
  readonly change: (device: Device) => void;
}

const KitchensContext = createContext<Kitchens | undefined>(undefined);

/** Opens the kitchen of this device for all that is within. */
export function KitchenProvider({ children }: { readonly children: ReactNode }): ReactNode {
  const [device, setDevice] = useState(readDevice);
  const [found, setFound] = useState<KitchenSession | OpeningFault>();
  const { open: id, name, by } = device;
  useEffect(() => {
    if (id === undefined) return undefined;
    let isWanted = true;
    let session: KitchenSession | undefined;
    void openSession(id, name, true).then((opened) => {
      if (!("ok" in opened)) session = opened;
      if (isWanted) setFound(opened);
      else void session?.close();
    });
    return () => {
      isWanted = false;
      setFound(undefined);
      void session?.close();
    };
  }, [id, name]);
  // Who writes may change under the hand: the kitchen stays open, with all that is half typed.
  useEffect(() => {
    if (found !== undefined && !("ok" in found)) found.by = by;
  }, [found, by]);
  useTables(found);
  const opening = useOpeningOf(id, found);
  const kitchens = useMemo(() => {
    const change = (next: Device): void => {
      writeDevice(next);
      setDevice(next);
    };
    const make = async (content: unknown): Promise<boolean> => {
      const made = await makeKitchen(device, content);
      if (made !== undefined) change(made);
      return made !== undefined;
    };
    return { opening, make, device, change };
  }, [opening, device]);
  return <KitchensContext value={kitchens}>{children}</KitchensContext>;
}

/** Tells an open kitchen its starter tables in the language in use. */
function useTables(found: KitchenSession | OpeningFault | undefined): void {
  const { language } = useWords();
  useEffect(() => {
    if (found === undefined || "ok" in found) return undefined;
    let isWanted = true;
    void loadSessionParts()
      .then(([, , { loadTablesIn }]) => loadTablesIn(language))
      .then((tables) => isWanted && found.speak(tables));
    return () => {
      isWanted = false;
    };
  }, [found, language]);
}

function useOpeningOf(id: string | undefined, found: KitchenSession | OpeningFault | undefined): Opening {
  const session = found === undefined || "ok" in found ? undefined : found;
  const view = useSyncExternalStore(session?.subscribe ?? subscribeToNothing, () => session?.view);
  return useMemo((): Opening => {
    if (id === undefined) return { kind: "none" };
    if (found === undefined) return { kind: "opening" };
    if ("ok" in found) return { kind: "refused", fault: found };
    return view === undefined ? { kind: "none" } : { kind: "open", session: found, view };
  }, [id, found, view]);
}

function subscribeToNothing(): () => void {
  return () => {};
}

/** Begins to load what opening a kitchen takes, before the first component asks for it. */
export async function beginOpening(): Promise<void> {
  const language = findLanguage();
  const told = ["foods", "dishes"] as const;
  const texts = language === "en" ? [] : told.map((each) => fetchStarter(`${each}.${language}.json`));
  await Promise.all([fetchStarter("foods.json"), fetchStarter("dishes.json"), ...texts, loadSessionParts()]);
}

function loadSessionParts() {
  return loadSurely(() =>
    Promise.all([import("./KitchenSession.ts"), import("../sharing/guardOf.ts"), import("./loadStarter.ts")]),
  );
}

async function openSession(id: string, name: string, expected: boolean): Promise<KitchenSession | OpeningFault> {
  const [{ KitchenSession }, { guardOf }, { loadTablesIn }] = await loadSessionParts();
  const session = await KitchenSession.open(id, { starter: loadTablesIn(findLanguage()), device: name, expected });
  if (!("ok" in session)) session.guard(guardOf(id));
  return session;
}

/** The device with a new kitchen made from what was given; undefined where that holds no kitchen. */
async function makeKitchen(device: Device, content: unknown): Promise<Device | undefined> {
  const id = `kitchen-${Date.now().toString(36)}`;
  const session = await openSession(id, device.name, false);
  if ("ok" in session) return undefined;
  session.by = device.by;
  const isIn = (await session.bringIn(content)) === "brought";
  const title = session.view?.kitchen.name;
  await session.close();
  if (!isIn || title === undefined) return undefined;
  return { ...device, open: id, kitchens: [...device.kitchens, { id, title }] };
}

function useKitchens(): Kitchens {
  const kitchens = useContext(KitchensContext);
  if (kitchens === undefined) throw new Error("there is no kitchen outside of a KitchenProvider");
  return kitchens;
}

/** What hands the same kitchens on to a page that is drawn elsewhere. */
export function usePassKitchens(): (page: ReactNode) => ReactNode {
  const kitchens = useKitchens();
  return useCallback((page) => <KitchensContext value={kitchens}>{page}</KitchensContext>, [kitchens]);
}

/** How far the opening has come. */
export function useOpening(): Opening {
  return useKitchens().opening;
}

/** What makes a kitchen of a backup or a file. */
export function useMakeKitchen(): Kitchens["make"] {
  return useKitchens().make;
}

/** What this device remembers by itself, and what sets it. */
export function useDevice(): Pick<Kitchens, "device" | "change"> {
  return useKitchens();
}

/** The open kitchen; only for what is shown while one is open. */
export function useKitchen(): { readonly session: KitchenSession; readonly view: KitchenView } {
  const opening = useOpening();
  if (opening.kind !== "open") throw new Error("no kitchen is open");
  return opening;
}
