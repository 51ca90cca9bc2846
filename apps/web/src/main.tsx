import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./look/tokens.css";
import "./look/base.css";
import "./look/parts.css";
import { KitchenProvider } from "./kitchen/KitchenProvider.tsx";
import { Shell } from "./shell/Shell.tsx";
import { WordsProvider } from "./words/WordsContext.tsx";

const place = document.getElementById("app");
if (place === null) throw new Error("the page has no place for the app");
createRoot(place).render(
  <StrictMode>
    <WordsProvider>
      <KitchenProvider>
        <Shell />
      </KitchenProvider>
    </WordsProvider>
  </StrictMode>,
);
