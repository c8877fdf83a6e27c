import { useCallback, useMemo } from "react";
import { findingsOf, leadSentence } from "../../solver/index.ts";
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
import { inOrder } from "./finding-order.ts";
import { YearView } from "./year-view.tsx";

const cautions = [
  "Not modelled: corners, fasteners, water that runs down inside the wall, air that loops within a layer.",
  "Mould, rot and frost hurt people and houses: local codes and a licensed designer decide.",
];

export default function YearSheet(): React.JSX.Element {
  const project = useProject();
  const option = useActiveOption();
  const path = useActivePath();
  const run = useRun(option.id, path.id);
  const units = useUnits();
  const { result, case: aCase, status } = run;
  const planned = useMemo(() => ({ layers: planLayers(project, path), pathKind: path.kind }), [project, path]);
  const onScale = useCallback((scale: string) => view({ scale }), []);
  const told = useMemo(() => {
    if (!result || !aCase) return null;
    const spoken = { units: units === "si" ? "si" : "ip" } as const;
    const findings = findingsOf(aCase, result, spoken);
    return { findings: inOrder(findings), lead: leadSentence(aCase, result, findings, spoken) };
  }, [result, aCase, units]);
  const waiting =
    status === "running" ? "The year of this wall is being worked out." : "No year has been run for this wall.";
  return (
    <YearView
      run={run}
      planned={planned}
      lead={told?.lead ?? waiting}
      findings={told?.findings ?? []}
      cautions={cautions}
      units={units}
      day={useSelectedDay()}
      onDay={setSelectedDay}
      onScale={onScale}
      fileName={`year-${option.id}-${path.id}`}
    />
  );
}
