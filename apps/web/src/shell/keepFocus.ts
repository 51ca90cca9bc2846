/** What the keyboard goes to, in the order of the page. */
const REACHED = "a[href], button, input, select, textarea, summary, [tabindex='0']";
/** What comes in the place of something gone has so long to take the focus itself, or to be there at all. */
const SETTLED_MS = 60;

/** Where the focus was when it was last seen. */
interface Place {
  readonly element: HTMLElement;
  /** What it stood in, from the nearest to the page's main part. */
  readonly around: readonly Element[];
  /** All that could be reached then, and where it was among that. */
  readonly reached: readonly HTMLElement[];
  readonly at: number;
}

/**
 * From now on the focus of the keyboard goes on near by where what had it goes away or can be touched no more: back to what
 * brought it here, to what is new in its place, else to what came after it or before it, in the nearest part of the page that is
 * still there. A hand that points is left alone: to it a focus would only bring up a keyboard.
 */
export function keepFocus(): void {
  let last = seePlace();
  let wayBack: { readonly around: Element; readonly text: string } | undefined;
  let isByKey = true;
  let timer: ReturnType<typeof setTimeout> | undefined;

  addEventListener("pointerdown", () => (isByKey = false), true);
  addEventListener(
    "keydown",
    ({ key }) => {
      isByKey = true;
      if (key === "Enter" || key === " ") last = seePlace() ?? last;
    },
    true,
  );
  addEventListener("focusin", () => (last = seePlace() ?? last), true);
  new MutationObserver(() => {
    if (!isByKey || timer !== undefined || last === undefined || canHave(last.element) || !isFree(last)) return;
    timer = setTimeout(goOn, SETTLED_MS);
  }).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ["disabled"] });

  function goOn(): void {
    timer = undefined;
    if (last === undefined || !isFree(last)) return;
    const { element, reached, at } = last;
    if (canHave(element)) {
      element.focus();
      return;
    }
    const before = new Set(reached);
    for (const around of last.around.filter((each) => each.isConnected)) {
      const here = listReached(around);
      const back =
        wayBack?.around === around ? here.find(({ textContent }) => textContent === wayBack?.text) : undefined;
      const fresh = beginForm(
        here.find((each) => !before.has(each)),
        before,
      );
      const near = [...reached.slice(at + 1), ...reached.slice(0, at).reverse()].find((each) => here.includes(each));
      const next = back ?? fresh ?? near;
      if (next === undefined) continue;
      wayBack = next === fresh ? { around, text: element.textContent } : undefined;
      next.focus();
      return;
    }
    document.querySelector("main")?.focus();
  }
}

/** The first of the form that something new is in, where all of it is new. */
function beginForm(fresh: HTMLElement | undefined, before: ReadonlySet<HTMLElement>): HTMLElement | undefined {
  const form = fresh?.closest("form");
  const all = form ? listReached(form) : [];
  return all.some((each) => before.has(each)) ? fresh : (all[0] ?? fresh);
}

function seePlace(): Place | undefined {
  const element = document.activeElement;
  const main = element?.closest("main");
  if (!(element instanceof HTMLElement) || !main || element === main) return undefined;
  const around: Element[] = [];
  for (let each = element.parentElement; each !== null && around.at(-1) !== main; each = each.parentElement)
    around.push(each);
  const reached = listReached(main);
  return { element, around, reached, at: reached.indexOf(element) };
}

function listReached(within: Element): HTMLElement[] {
  return [...within.querySelectorAll<HTMLElement>(REACHED)].filter(
    (each) => !each.matches(":disabled") && each.checkVisibility(),
  );
}

/** True where it had the focus, and nothing else has taken it. */
function isFree({ element }: Place): boolean {
  return document.activeElement === document.body || document.activeElement === element;
}

function canHave(element: HTMLElement): boolean {
  return element.isConnected && !element.matches(":disabled");
}
