import { createRoot } from "preact/compat/client";
import "./look/faces.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/parts.css";
import { KitchenProvider } from "./kitchen/KitchenProvider.tsx";
import { newerApp } from "./shell/newerApp.ts";
import { Shell } from "./shell/Shell.tsx";
import { WordsProvider } from "./words/WordsContext.tsx";

const place = document.getElementById("app");
if (place === null) throw new Error("the page has no place for the app");
createRoot(place).render(
  <WordsProvider>
    <KitchenProvider>
      <Shell />
    </KitchenProvider>
  </WordsProvider>,
);

// In the workshop, where sources change all the time, nothing is kept.
if (import.meta.env.PROD) void newerApp.start();
