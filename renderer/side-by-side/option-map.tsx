import { useMemo } from "react";
import type { TimeScale } from "../plots/calendar.ts";
import type { MapQuantity } from "../plots/map-chart.ts";
import type { DrawnWall } from "../plots/section-strip.tsx";
import { mapStateOf } from "../plots/state-line.tsx";
import { ThroughWallMap } from "../plots/through-wall-map.tsx";
import { layerSpans } from "../plots/wall-depths.ts";
import type { Units } from "../state/index.ts";
import type { OptionInView } from "./option-in-view.ts";

/** The through-wall map of one of the two; the first carries the title and the choice of quantity for both. */
export function OptionMap({
  option,
  wall,
  first,
  quantity,
  onQuantity,
  units,
  width,
  height,
  foot,
  tail,
  time,
  day,
  onDay,
}: {
  readonly option: OptionInView;
  readonly wall: DrawnWall;
  readonly first: boolean;
  readonly quantity: MapQuantity;
  readonly onQuantity: (quantity: MapQuantity) => void;
  readonly units: Units;
  readonly width: number;
  readonly height: number;
  readonly foot: number;
  readonly tail: number;
  readonly time: TimeScale;
  readonly day: number;
  readonly onDay: (day: number) => void;
}): React.JSX.Element {
  const spans = useMemo(() => layerSpans(wall.layers), [wall]);
  return (
    <ThroughWallMap
      result={option.run.result ?? null}
      spans={spans}
      time={time}
      quantity={quantity}
      {...(first ? { onQuantity } : {})}
      units={units}
      width={width}
      height={height}
      foot={foot}
      tail={tail}
      day={day}
      onDay={onDay}
      state={mapStateOf(option.run, time)}
      titled={first}
      titlePrefix={first ? "" : `${option.id}: `}
      fileName={`side-by-side-${option.id}-${quantity}`}
    />
  );
}
