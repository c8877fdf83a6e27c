import { useCallback, useRef, type KeyboardEvent } from "react";

export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

/**
 * One tab stop for a whole table; arrows move within it. Cells carry `data-row` and `data-column`.
 * Alt with an arrow is left alone: it moves a layer.
 */
export function useGridFocus(rows: number, columns: number, place: GridPlace, onMove: (place: GridPlace) => void) {
  const grid = useRef<HTMLTableElement>(null);

  const focusCell = useCallback(({ row, column }: GridPlace): void => {
    grid.current?.querySelector<HTMLElement>(`[data-row="${row}"][data-column="${column}"]`)?.focus();
  }, []);

  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.target instanceof HTMLInputElement) return;
    const moves: Record<string, GridPlace> = {
      ArrowUp: { row: place.row - 1, column: place.column },
      ArrowDown: { row: place.row + 1, column: place.column },
      ArrowLeft: { row: place.row, column: place.column - 1 },
      ArrowRight: { row: place.row, column: place.column + 1 },
      Home: { row: place.row, column: 0 },
      End: { row: place.row, column: columns - 1 },
    };
    const wanted = moves[event.key];
    if (!wanted) return;
    event.preventDefault();
    const next = {
      row: Math.max(0, Math.min(rows - 1, wanted.row)),
      column: Math.max(0, Math.min(columns - 1, wanted.column)),
    };
    onMove(next);
    focusCell(next);
  };

  return { grid, onKeyDown, focusCell };
}
