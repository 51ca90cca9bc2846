import { createRoot } from "preact/compat/client";
import "./look/faces.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/parts.css";
import { readDevice } from "./kitchen/device.ts";
import { beginOpening, KitchenProvider } from "./kitchen/KitchenProvider.tsx";
import { newerApp } from "./shell/newerApp.ts";
import { Shell } from "./shell/Shell.tsx";
import { isAt, SCREENS } from "./shell/screens.ts";
import { WordsProvider } from "./words/WordsContext.tsx";

const place = document.getElementById("app");
if (place === null) throw new Error("the page has no place for the app");
if (readDevice().open !== undefined) {
  void beginOpening();
  void SCREENS.find((screen) => isAt(screen, location.pathname))?.load();
}
createRoot(place).render(
  <WordsProvider>
    <KitchenProvider>
      <Shell />
    </KitchenProvider>
  </WordsProvider>,
);

// In the workshop, where sources change all the time, nothing is kept.
if (import.meta.env.PROD) void newerApp.start();
