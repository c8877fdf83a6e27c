import { mapScales, type MapQuantity } from "./map-chart.ts";
import type { ShownUnits } from "./quantities.ts";
import { cssGradient } from "./scales.ts";
import { useChartTokens } from "./tokens.ts";

/** What the map's tones mean: the whole scale with its figures. */
export function ScaleBar({ quantity, units }: { quantity: MapQuantity; units: ShownUnits }): React.JSX.Element {
  const { theme } = useChartTokens();
  const scale = mapScales[quantity];
  const share = (at: number): number => (at - scale.from) / (scale.to - scale.from);
  return (
    <div className="scale-bar">
      <div className="scale-tones" style={{ background: cssGradient(scale.name, theme) }} />
      <div className="scale-figures">
        {scale.ticks(units).map(({ at, text }) => {
          const t = share(at);
          return (
            <span
              key={at}
              style={
                t < 0.01
                  ? { left: 0 }
                  : t > 0.99
                    ? { right: 0 }
                    : { left: `${100 * t}%`, transform: "translateX(-50%)" }
              }
            >
              {text}
            </span>
          );
        })}
      </div>
    </div>
  );
}
