import { useCallback, useMemo, useState } from "react";
import { wholeWall } from "../../solver/index.ts";
import { planLayers } from "../plots/plan-layers.ts";
import { setSelectedDay, useActivePath, useProject, useSelectedDay, useUnits, view } from "../state/index.ts";
import { useOptionRuns } from "./option-runs.ts";
import { alternativeOf, Alternatives } from "./alternatives.tsx";
import { OwnFigures } from "./own-figures.tsx";
import type { OptionInView } from "./option-in-view.ts";
import { PairView } from "./pair-view.tsx";

export default function SideBySideSheet(): React.JSX.Element {
  const project = useProject();
  const path = useActivePath();
  const units = useUnits();
  const day = useSelectedDay();
  const runs = useOptionRuns(project.options, path.id);
  const onScale = useCallback((scale: string) => view({ scale }), []);
  const fixed = useMemo(
    () =>
      project.options.map((option) => ({
        wall: wholeWall(option, project),
        price_perM2: option.price_perM2 ?? null,
        carbon_kgCO2ePerM2: option.carbon_kgCO2ePerM2 ?? null,
      })),
    [project],
  );
  const planned = useMemo(
    () => runs.map(({ path: own }) => ({ layers: planLayers(project, own), pathKind: own.kind })),
    [project, runs],
  );
  const [wanted, setWanted] = useState<readonly [string, string]>(["A", "B"]);
  const ids = project.options.map(({ id }) => id);
  const options: OptionInView[] = runs.map(({ option, run }, index) => ({
    id: option.id,
    name: option.name,
    run,
    planned: planned[index]!,
    ...fixed[index]!,
  }));
  if (options.length < 2) {
    const alternatives = project.options.flatMap((option) => alternativeOf(project, option) ?? []);
    return (
      <div className="pair-alone">
        <h1 className="lead">Side by Side needs two options.</h1>
        <Alternatives alternatives={alternatives} />
      </div>
    );
  }
  const first = ids.includes(wanted[0]) ? wanted[0] : ids[0]!;
  const second = ids.includes(wanted[1]) && wanted[1] !== first ? wanted[1] : ids.find((id) => id !== first)!;
  return (
    <PairView
      options={options}
      pair={[first, second]}
      onPair={setWanted}
      units={units}
      day={day}
      onDay={setSelectedDay}
      onScale={onScale}
      foot={
        <>
          <Alternatives
            alternatives={project.options
              .filter(({ id }) => id === first || id === second)
              .flatMap((option) => alternativeOf(project, option) ?? [])}
          />
          <OwnFigures options={options.filter(({ id }) => id === first || id === second)} />
        </>
      }
    />
  );
}
