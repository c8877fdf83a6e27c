import { useId } from "react";
import type { Case, CaseLayer, HowThickAnswer } from "../../../solver/index.ts";
import { hatchOf, hatchPaths } from "../../section/index.ts";
import type { Units } from "../../state/index.ts";
import { Fraction, lengthFigure, lengthText, Sentence } from "../../units/index.ts";
import { boardsOf, boardWords, pointAt } from "./view-model.ts";

interface BoardsProps {
  readonly aCase: Case;
  readonly layer: CaseLayer;
  readonly answer: HowThickAnswer | null;
  readonly kind: string;
  readonly asked: readonly string[];
  readonly chosen_m: number;
  readonly onChoose: (thickness_m: number) => void;
  /** Where the axis above begins, and its scale. */
  readonly left: number;
  readonly pixelsPerMetre: number;
  readonly units: Units;
}

/** Boards in stock, drawn to the axis of the curve above them: what a board leaves in hand is a length. */
export function Boards(props: BoardsProps) {
  const { aCase, layer, answer, kind, asked, chosen_m, onChoose, left, pixelsPerMetre, units } = props;
  const name = useId();
  if (pixelsPerMetre <= 0) return null;
  return (
    <fieldset className="boards">
      <legend className="visually-hidden">Boards, drawn to the axis above</legend>
      {boardsOf(layer).map((board_m) => {
        const chosen = Math.abs(board_m - chosen_m) < 1e-4;
        const words = boardWords(answer === null ? null : pointAt(answer.points, board_m), kind, asked, units);
        return (
          <label key={board_m} className={chosen ? "board-row board-chosen" : "board-row"}>
            <input
              type="radio"
              className="visually-hidden"
              name={name}
              checked={chosen}
              aria-label={`${lengthText(board_m, units)}, ${words}`}
              onChange={() => onChoose(board_m)}
            />
            <span className="board-name" style={{ width: left - 8 }}>
              <Fraction text={lengthFigure(board_m, units)} />
            </span>
            <BoardDrawing aCase={aCase} layer={layer} width={board_m * pixelsPerMetre} height={chosen ? 22 : 12} />
            <span className="board-words">
              <Sentence text={words} />
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}

function BoardDrawing({
  aCase,
  layer,
  width,
  height,
}: {
  aCase: Case;
  layer: CaseLayer;
  width: number;
  height: number;
}) {
  const id = useId();
  const hatch = hatchPaths(hatchOf(layer.material, aCase.pathKind), { x: 0, y: 0, width, height, unit: 0.6 });
  return (
    <svg className="board-drawing" width={width} height={height} aria-hidden="true">
      <clipPath id={id}>
        <rect width={width} height={height} />
      </clipPath>
      <g clipPath={`url(#${id})`}>
        {hatch.stroke && <path className="hatch-stroke" d={hatch.stroke} />}
        {hatch.solid && <path className="hatch-solid" d={hatch.solid} />}
      </g>
      <rect className="board-edge" x={0.5} y={0.5} width={Math.max(0, width - 1)} height={height - 1} />
    </svg>
  );
}
