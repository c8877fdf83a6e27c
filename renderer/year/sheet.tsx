import { useCallback, useMemo } from "react";
import { planLayers } from "../plots/plan-layers.ts";
import {
  setSelectedDay,
  useActiveOption,
  useActivePath,
  useProject,
  useRun,
  useSelectedDay,
  useUnits,
  view,
} from "../state/index.ts";
import { YearView } from "./year-view.tsx";

export default function YearSheet(): React.JSX.Element {
  const project = useProject();
  const option = useActiveOption();
  const path = useActivePath();
  const run = useRun(option.id, path.id);
  const planned = useMemo(() => ({ layers: planLayers(project, path), pathKind: path.kind }), [project, path]);
  const onScale = useCallback((scale: string) => view({ scale }), []);
  return (
    <YearView
      run={run}
      planned={planned}
      lead={""}
      findings={[]}
      cautions={[]}
      units={useUnits()}
      day={useSelectedDay()}
      onDay={setSelectedDay}
      onScale={onScale}
      fileName={`year-${option.id}-${path.id}`}
    />
  );
}
