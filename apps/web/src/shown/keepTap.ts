const TOUCHED = "a[href], button, summary, label, input, select, textarea";
const AROUND = "li, tr, form, section, nav, main";

/** What was tapped: which of those that say and stand as it does. */
interface Tapped {
  readonly sign: string;
  readonly nth: number;
}

/** Keeps the last tap on a picture of a screen, which can't be touched itself, until the screen is there to be tapped. */
export function keepTap(picture: HTMLElement): { readonly repeatIn: (place: HTMLElement) => void } {
  let tapped: Tapped | undefined;
  const hear = ({ clientX, clientY }: MouseEvent): void => {
    picture.inert = false;
    const touched = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>(TOUCHED);
    picture.inert = true;
    tapped = touched == null || !picture.contains(touched) ? undefined : tellOf(touched, picture);
  };
  document.addEventListener("click", hear);
  return {
    repeatIn: (place) => {
      document.removeEventListener("click", hear);
      if (tapped === undefined) return;
      const touched = listAlike(place, tapped.sign)[tapped.nth];
      touched?.focus({ preventScroll: true });
      touched?.click();
    },
  };
}

function tellOf(touched: HTMLElement, picture: HTMLElement): Tapped {
  const sign = signOf(touched);
  return { sign, nth: listAlike(picture, sign).indexOf(touched) };
}

function listAlike(within: HTMLElement, sign: string): HTMLElement[] {
  return [...within.querySelectorAll<HTMLElement>(TOUCHED)].filter((each) => signOf(each) === sign);
}

/** What it is, where it leads, what it says, and what stands around it: on another line the same words are about another thing. */
function signOf(each: HTMLElement): string {
  const { tagName, textContent } = each;
  const around = each.parentElement?.closest(AROUND)?.textContent;
  return JSON.stringify([tagName, each.getAttribute("href"), each.getAttribute("aria-label"), textContent, around]);
}
