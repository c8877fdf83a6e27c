import { materialById, type Case, type CaseLayer, type Project } from "../../../solver/index.ts";
import type { Units } from "../../state/index.ts";
import { boardOf, drawnValue, insulationLayers } from "../asking/asked-case.ts";
import { criteria } from "../asking/criteria.ts";
import { askWith, type QuestionInputs } from "../asking/question-inputs.ts";
import { plainName } from "../parts/plain-name.ts";
import { AskedChoice } from "../sentence/asked-choice.tsx";
import { PlaceChoice } from "../sentence/place-choice.tsx";
import { HumidityInput, PaintInput } from "../sentence/room-inputs.tsx";
import { WallChoice } from "../sentence/wall-choice.tsx";

/** Boards that may be laid outside without drawing them first. */
const boards = ["xps", "eps_ii", "pir_foil", "pir_glass", "stone_wool_board", "wood_fibre_board"] as const;

interface HowThickQuestionProps {
  readonly project: Project;
  /** As drawn. */
  readonly drawn: Case;
  /** The layer asked for; null where there is none yet. */
  readonly layer: CaseLayer | null;
  readonly insulation: string | null;
  readonly inputs: QuestionInputs;
  readonly units: Units;
}

/** "How thick must extruded polystyrene be outside ...": the underlined words are the inputs. */
export function HowThickQuestion({ project, drawn, layer, insulation, inputs, units }: HowThickQuestionProps) {
  const layers = insulationLayers(drawn);
  const board = boardOf(insulation);
  const value = board !== null ? `board:${board}` : `layer:${layer?.id ?? ""}`;
  const here = layers.map((each) => ({ value: `layer:${each.id}`, words: plainName(each.name) }));
  const laid = boards
    .filter((id) => !layers.some((each) => each.material.id === id))
    .flatMap((id) => {
      const found = materialById(id);
      return found ? [{ value: `board:${id}`, words: `${plainName(found.name)}, laid outside` }] : [];
    });
  return (
    <>
      How thick must{" "}
      <AskedChoice
        label="Insulation whose thickness is asked for"
        value={value}
        choices={[...here, ...laid]}
        changed={inputs.insulation !== null}
        onChange={(chosen) => askWith({ insulation: chosen })}
      />{" "}
      be in the <WallChoice project={project} option={drawn.option} path={drawn.path} />, at{" "}
      <PlaceChoice project={project} place={inputs.place} />, with{" "}
      {drawnValue(drawn, "finishPermeance") !== null && (
        <>
          <PaintInput aCase={drawn} inputs={inputs} units={units} /> and{" "}
        </>
      )}
      <HumidityInput aCase={drawn} inputs={inputs} /> humidity in winter, so that{" "}
      <AskedChoice
        label="What must hold"
        value={inputs.criterion}
        choices={criteria}
        onChange={(criterion) => askWith({ criterion })}
      />
      ?
    </>
  );
}
