import { createRoot } from "preact/compat/client";
import "./look/faces.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/parts.css";
import { readDevice } from "./kitchen/device.ts";
import { beginOpening, KitchenProvider } from "./kitchen/KitchenProvider.tsx";
import { giveTurn } from "./kitchen/rest.ts";
import { today } from "./kitchen/today.ts";
import { Loading } from "./loading/Loading.tsx";
import { loadSurely } from "./loading/loadSurely.ts";
import { newerApp } from "./shell/newerApp.ts";
import { Shell } from "./shell/Shell.tsx";
import { loadAhead } from "./shell/screens.ts";
import { whenShown } from "./shell/whenShown.ts";
import { readShown } from "./shown/ShownBefore.ts";
import { showBefore } from "./shown/showBefore.ts";
import { Formats } from "./words/Formats.ts";
import { findLanguage, findLocale } from "./words/languages.ts";
import { WordsProvider } from "./words/WordsContext.tsx";

const place = document.getElementById("app");
if (place === null) throw new Error("the page has no place for the app");
void start(place);

async function start(place: HTMLElement): Promise<void> {
  const { open } = readDevice();
  const shown = open === undefined ? undefined : readShown(location.pathname, open, today());
  if (shown !== undefined) await showBefore(place, shown);
  if (open !== undefined) {
    void beginOpening();
    loadAhead(location.pathname, findLanguage());
  }
  createRoot(place).render(
    <WordsProvider waiting={<Loading isQuiet />}>
      <KitchenProvider>
        <Shell />
      </KitchenProvider>
    </WordsProvider>,
  );
  // Formats take long to get ready the first time, for the shortest while there is nothing else to do.
  void giveTurn().then(() => new Formats(findLocale(findLanguage())).getReady());
  // Only a keyboard loses its place.
  addEventListener(
    "keydown",
    () => void loadSurely(() => import("./shell/keepFocus.ts")).then((part) => part.keepFocus()),
    {
      once: true,
    },
  );
  // In the workshop, where sources change all the time, nothing is kept. What keeps the app fetches all of it, so that what the
  // page shows first goes before.
  if (import.meta.env.PROD) void whenShown(place).then(() => newerApp.start());
}
