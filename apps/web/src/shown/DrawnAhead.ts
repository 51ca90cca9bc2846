import { createContext } from "react";

/** True where a screen is drawn to be shown at the next start: what is true of the moment alone is left out. */
export const DrawnAhead = createContext(false);
