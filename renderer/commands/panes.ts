/** Moves the focus to the next or previous pane: the top strip, the sheet's own panes, the title block. */
export function movePane(step: 1 | -1): void {
  const panes = [...document.querySelectorAll<HTMLElement>("[data-pane]")].filter((pane) => pane.offsetParent !== null);
  if (panes.length === 0) return;
  const here = panes.findIndex((pane) => pane.contains(document.activeElement));
  const next = panes[(here + step + panes.length) % panes.length] ?? panes[0]!;
  const first = next.querySelector<HTMLElement>(
    '[aria-current], [aria-pressed="true"], [tabindex="0"], button:not([disabled]), input, select, a[href]',
  );
  (first ?? next).focus();
}
