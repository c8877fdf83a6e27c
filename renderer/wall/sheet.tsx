import { useActivePath, useUnits } from "../state/index.ts";
import { Length, pathTitle } from "../units/index.ts";

export default function WallSheet() {
  const path = useActivePath();
  const units = useUnits();
  return (
    <section data-pane="Layer schedule" tabIndex={-1} style={{ padding: "16px 24px" }}>
      <h2 className="strong">Layer schedule, {pathTitle(path)}</h2>
      <ol>
        {path.layers.map((layer) => (
          <li key={layer.id}>
            {layer.id} {layer.thickness_m !== undefined && <Length length_m={layer.thickness_m} units={units} />}
          </li>
        ))}
      </ol>
    </section>
  );
}
