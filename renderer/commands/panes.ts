/** Where the focus lands in a pane: what is chosen there, else its first control. */
const stops = [
  '[aria-current="page"]',
  '[tabindex="0"]',
  '[aria-pressed="true"]',
  "button:not([disabled]), input, select, a[href]",
];

/** Moves the focus to the next or previous pane: the top strip, the sheet's own panes, the title block. */
export function movePane(step: 1 | -1): void {
  const panes = [...document.querySelectorAll<HTMLElement>("[data-pane]")].filter((pane) => pane.offsetParent !== null);
  if (panes.length === 0) return;
  const here = panes.findIndex((pane) => pane.contains(document.activeElement));
  const next = panes[(here + step + panes.length) % panes.length] ?? panes[0]!;
  const first = stops
    .map((stop) => next.querySelector<HTMLElement>(stop))
    .find((element) => element !== null && element.offsetParent !== null);
  (first ?? next).focus();
}
