/**
 * Whether a page is being gone back to. It is shown where it was left, so that all of it must be there at once. Known before
 * anything is shown of the page.
 */
export const goingBack = { isUnderWay: false };

addEventListener(
  "popstate",
  () => {
    goingBack.isUnderWay = true;
  },
  { capture: true },
);
