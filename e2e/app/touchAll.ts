import type { Page } from "playwright-core";

/** What came of touching all that can be touched on a page. */
export interface Touched {
  /** How many buttons, ticks, choices and fields were touched. */
  readonly count: number;
  /** What the app refused to do when it was touched. */
  readonly refused: readonly string[];
  /** What left the keyboard without a focus when it was touched. */
  readonly lost: readonly string[];
}

/**
 * Touches whatever of a page can be touched, what shows up by that as well, each once, and says what was refused. Links are
 * left, and whatever begins with one of the given names. Where the focus is watched, each gets it before it is touched.
 */
export function touchAll(page: Page, spared: readonly string[] = [], watchesFocus = false): Promise<Touched> {
  return page.evaluate(touch, [spared, watchesFocus] as const);
}

/** Runs in the page. */
async function touch([spared, watchesFocus]: readonly [readonly string[], boolean]): Promise<Touched> {
  const most = 12;
  const main = document.querySelector("main") as HTMLElement;
  const done = new Set<string>();
  const refused: string[] = [];
  const lost: string[] = [];
  const settle = () => new Promise((resolve) => setTimeout(() => requestAnimationFrame(resolve)));
  const nameOf = (element: Element): string => {
    const label = element.closest("label") ?? element;
    const row = element.closest("li, details, form, section");
    return `${element.tagName} ${label.textContent} | ${row?.querySelector("summary, h2, h3")?.textContent ?? ""}`;
  };
  const act = (element: Element): void => {
    const isTick = element instanceof HTMLInputElement && ["checkbox", "radio"].includes(element.type);
    if (element instanceof HTMLButtonElement || isTick) {
      element.click();
      return;
    }
    const prototype = Object.getPrototypeOf(element);
    const set = Object.getOwnPropertyDescriptor(prototype, "value")?.set;
    const other = element instanceof HTMLSelectElement && [...element.options].find((each) => !each.selected);
    if (element instanceof HTMLSelectElement && !other) return;
    set?.call(element, other ? other.value : "1");
    element.dispatchEvent(new Event(element instanceof HTMLSelectElement ? "change" : "input", { bubbles: true }));
  };
  // Of many alike, such as the plates of a table, some are enough.
  const alike = new Map<string, number>();
  const isNew = (element: Element): boolean => {
    const kind = `${element.className} ${nameOf(element).split(" | ")[1]}`;
    return !done.has(nameOf(element)) && (alike.get(kind) ?? 0) < most;
  };
  const next = (): Element | undefined =>
    [...main.querySelectorAll("button, select, textarea, input:not([type=file], [type=range])")].find((element) => {
      const isSpared = spared.some((name) => nameOf(element).includes(` ${name}`));
      const isOpen = !element.matches(":disabled, [readonly]") && element.closest(".forbidden") === null;
      return isOpen && !isSpared && isNew(element);
    });
  const keepsFocus = async (): Promise<boolean> => {
    for (let looks = 0; looks < 20 && document.activeElement === document.body; looks++)
      await new Promise((resolve) => setTimeout(resolve, 20));
    return document.activeElement !== document.body;
  };
  for (const details of main.querySelectorAll("details")) details.open = true;
  await settle();
  for (let element = next(); element !== undefined && done.size < 400; element = next()) {
    const name = nameOf(element);
    done.add(name);
    const kind = `${element.className} ${name.split(" | ")[1]}`;
    alike.set(kind, (alike.get(kind) ?? 0) + 1);
    if (watchesFocus) (element as HTMLElement).focus();
    act(element);
    await settle();
    if (watchesFocus && !(await keepsFocus())) lost.push(name);
    for (const details of main.querySelectorAll("details:not([open])")) (details as HTMLDetailsElement).open = true;
    const told = main.querySelector<HTMLButtonElement>(".forbidden button");
    if (told === null) continue;
    refused.push(name);
    told.click();
    await settle();
  }
  return { count: done.size, refused, lost };
}
