/** The link by which this page was opened, where that is an invitation. */
export const invited: { link: string | undefined } = { link: takeLink() };

/** Takes an invitation out of the address, so that its secret is neither seen nor kept there; undefined where there is none. */
export function takeLink(): string | undefined {
  if (location.pathname !== "/join" || location.hash === "") return undefined;
  const link = location.href;
  history.replaceState(history.state, "", "/join");
  return link;
}
