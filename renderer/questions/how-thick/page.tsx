import { useEffect, useMemo, useState } from "react";
import {
  codeRowOf,
  howThick,
  ratedConductivity_WmK,
  ratedResistance_m2KW,
  rsiPerR,
  wallFacts,
  withThickness,
  type Case,
  type CaseLayer,
  type HowThickAnswer,
  type Winter,
} from "../../../solver/index.ts";
import { useSize } from "../../plots/use-size.ts";
import { useUnits, useViewStore, view, type Units } from "../../state/index.ts";
import { lengthText, resistanceText, share } from "../../units/index.ts";
import { askedLayer, atPlace, boardOf, drawnValue, insulationAsked, withBoard } from "../asking/asked-case.ts";
import { kindsOf } from "../asking/criteria.ts";
import { useQuestionInputs } from "../asking/question-inputs.ts";
import { useStudy } from "../asking/use-study.ts";
import { CannotAsk } from "../parts/cannot-ask.tsx";
import { PageFrame } from "../parts/page-frame.tsx";
import { StudyLine } from "../parts/study-line.tsx";
import { useAskedCase, useWallInView, type WallInView } from "../parts/use-wall.ts";
import { winterOf } from "../parts/winter.ts";
import { Boards } from "./boards.tsx";
import { CodeTable } from "./code-table.tsx";
import type { BesideLine } from "./curve-chart.ts";
import { CurveFigure } from "./curve-figure.tsx";
import { moversStudy, type Mover } from "./movers.ts";
import { MoversTable } from "./movers-table.tsx";
import { HowThickQuestion } from "./question.tsx";
import { RatioRule } from "./ratio-rule.tsx";
import { RestOfWall } from "./rest-of-wall.tsx";
import { ThreeAnswers } from "./three-answers.tsx";
import { UseIt } from "./use-it.tsx";
import { answerWords, boardsOf, firstBoard, firstKind, measuredAt, pointAt } from "./view-model.ts";

/** Room for the figures of the vertical axis, and for the words behind the longest board [px]. */
const left_px = 42;
const words_px = 118;

export function HowThickPage() {
  const wall = useWallInView();
  if (!wall.drawn.ok)
    return (
      <PageFrame
        sentence="How thick must the insulation be?"
        answer={null}
        state={<CannotAsk issues={wall.drawn.issues} />}
        main={null}
        side={null}
        stale={false}
      />
    );
  return <Asked key={`${wall.option}/${wall.path}`} wall={wall} drawn={wall.drawn.case} />;
}

const shortLength = (length_m: number, units: Units): string => lengthText(length_m, units === "both" ? "ip" : units);

function Asked({ wall, drawn }: { wall: WallInView; drawn: Case }) {
  const inputs = useQuestionInputs();
  const units = useUnits();
  const edition = useViewStore((state) => state.edition);
  const insulation = insulationAsked(drawn, inputs.insulation);
  const aCase = useAskedCase(wall, { ...inputs, insulation });
  const layer = aCase === null ? null : askedLayer(aCase, insulation);
  const facts = useMemo(() => {
    const found = wall.project.options.find(({ id }) => id === wall.option)!;
    return wallFacts(found, wall.project);
  }, [wall.project, wall.option]);
  const zone = atPlace(wall.project, inputs.place).site?.climateZone;
  const codeRow = useMemo(
    () => (zone === undefined || facts.stud === "other" ? null : codeRowOf(edition, zone, facts.stud)),
    [zone, facts, edition],
  );
  const [winter, setWinter] = useState<Winter | null>(null);
  const study = useMemo(
    () =>
      aCase === null || layer === null
        ? null
        : howThick({ case: aCase, layer: layer.id, hold: kindsOf(inputs.criterion), codeRow, winter }),
    [aCase, layer, inputs.criterion, codeRow, winter],
  );
  const asked = useStudy<HowThickAnswer>(`howThick:${wall.option}/${wall.path}`, study, wall.mark);
  const air = asked?.air ?? null;
  useEffect(() => setWinter(air === null ? null : winterOf(air)), [air]);
  const start = answerIndex(asked?.answer ?? null, layer, asked?.status === "finished");
  const movers = useMemo(
    () =>
      aCase === null || layer === null || start === null
        ? null
        : moversStudy(aCase, layer.id, triedBoards(layer), start, kindsOf(inputs.criterion)),
    [aCase, layer, start, inputs.criterion],
  );
  const moved = useStudy<readonly Mover[]>(`movers:${wall.option}/${wall.path}`, movers, wall.mark, false);
  useEffect(() => view({ scale: "boards drawn to the axis" }), []);

  const [kindChosen, setKind] = useState<string | null>(null);
  const [boardChosen, setBoard] = useState<number | null>(null);
  const [place, { width }] = useSize<HTMLDivElement>();
  const question = (
    <HowThickQuestion
      project={wall.project}
      drawn={drawn}
      layer={layer}
      insulation={insulation}
      inputs={inputs}
      units={units}
    />
  );
  if (aCase === null || layer === null || asked === null)
    return (
      <PageFrame
        sentence={question}
        answer={null}
        state={
          <p>This path has no insulation to ask about. Choose a board to lay outside, or draw one on the Wall sheet.</p>
        }
        main={null}
        side={null}
        stale={false}
      />
    );

  const { answer } = asked;
  const stale = asked.status === "stale";
  const boards = boardsOf(layer);
  const complete = asked.status === "finished";
  const isThere = boardChosen !== null && boards.some((board) => Math.abs(board - boardChosen) < 1e-4);
  const board_m = isThere ? boardChosen : firstBoard(answer, inputs.criterion, layer, complete || stale);
  const boardWords = shortLength(board_m, units);
  const kind =
    answer === null ? "" : answer.needs.some(({ finding }) => finding === kindChosen) ? kindChosen! : firstKind(answer);
  const longest = Math.max(...boards);
  const axis_m = width > left_px + words_px ? (longest * (width - left_px)) / (width - left_px - words_px) : longest;
  const humidity = inputs.humidity ?? drawnValue(drawn, "winterHumidity");
  const conductivity_WmK = ratedConductivity_WmK(layer.material);
  const code = answer?.beside.code ?? null;
  const boardProject = withBoard(wall.project, wall.option, boardOf(insulation));
  return (
    <PageFrame
      stale={stale}
      sentence={question}
      answer={answer === null ? null : answerWords(answer, inputs.criterion, units, complete)}
      provisional={asked.status === "running"}
      state={<StudyLine asked={asked} says={`${boards.length} boards and a search between them`} />}
      left={
        <>
          {moved !== null && start !== null && (
            <MoversTable asked={moved} boards_m={triedBoards(layer)} start={start} units={units} />
          )}
          <UseIt
            project={wall.project}
            board={{
              option: wall.option,
              path: wall.path,
              layer: boardOf(insulation) === null ? layer.id : null,
              material: layer.material.id,
              thickness_m: board_m,
              words: boardWords,
            }}
          />
        </>
      }
      main={
        <div ref={place} className="thick-main">
          {answer !== null && answer.points.length > 0 ? (
            <CurveFigure
              answer={answer}
              kind={kind}
              onKind={setKind}
              beside={besideLines(moved?.answer ?? [], kind)}
              board_m={board_m}
              code={
                code === null
                  ? null
                  : {
                      thickness_m: code.thickness_m,
                      words: `code table, ${units === "si" ? resistanceText(code.row.least_m2KW, units) : `R-${Number((code.row.least_m2KW / rsiPerR).toFixed(2))}`}`,
                    }
              }
              conductivity_WmK={conductivity_WmK}
              words={stale ? "as asked before" : humidity === null ? "as asked" : `${share(humidity)} inside`}
              axis_m={axis_m}
              left={left_px}
              units={units}
            />
          ) : (
            <div className="nothing-yet curve-empty">The curve is drawn as soon as a thickness has been run.</div>
          )}
          <Boards
            aCase={aCase}
            layer={layer}
            answer={answer}
            kind={kind}
            asked={kindsOf(inputs.criterion)}
            chosen_m={board_m}
            onChoose={setBoard}
            left={left_px}
            pixelsPerMetre={width > 0 ? (width - left_px) / axis_m : 0}
            units={units}
          />
          <p className="note">Boards in stock, drawn to the axis above. Choose one to see what it does.</p>
        </div>
      }
      side={
        answer !== null && (
          <>
            <CodeTable
              edition={edition}
              zone={zone}
              stud={facts.stud}
              board={{ words: boardWords, resistance_m2KW: ratedResistance_m2KW(layer.material, board_m) }}
              units={units}
            />
            <RatioRule aCase={aCase} layer={layer} board_m={board_m} boardWords={boardWords} codeRow={codeRow} />
            <ThreeAnswers answer={answer} zone={zone} units={units} />
            <RestOfWall
              boardWords={boardWords}
              option={wall.option}
              units={units}
              board={{
                project: projectWithThickness(boardProject, wall.option, layer.id, board_m),
                case: withThickness(aCase, layer.id, board_m),
                summary: pointAt(answer.points, board_m)?.summary ?? null,
              }}
              drawn={{
                project: wall.project,
                case: drawn,
                summary: pointAt(answer.points, boardOf(insulation) === null ? layer.thickness_m : 0)?.summary ?? null,
              }}
            />
          </>
        )
      }
    />
  );
}

function projectWithThickness(
  project: WallInView["project"],
  option: string,
  layer: string,
  thickness_m: number,
): WallInView["project"] {
  return {
    ...project,
    options: project.options.map((each) =>
      each.id === option
        ? {
            ...each,
            paths: each.paths.map((path) => ({
              ...path,
              layers: path.layers.map((one) => (one.id === layer ? { ...one, thickness_m } : one)),
            })),
          }
        : each,
    ),
  };
}

/** No board at all, then those in stock. */
const triedBoards = (layer: CaseLayer): readonly number[] => [0, ...boardsOf(layer)];

/** Where the answer stands among the boards; null before it is known. One past the last: none keeps it. */
function answerIndex(answer: HowThickAnswer | null, layer: CaseLayer | null, complete: boolean): number | null {
  if (answer === null || layer === null || !complete) return null;
  const boards = triedBoards(layer);
  const index = boards.findIndex((board) => answer.board_m !== null && Math.abs(board - answer.board_m) < 1e-4);
  return index === -1 ? boards.length : index;
}

/** The drier and the damper room as lines beside the curve, as far as they were run. */
function besideLines(movers: readonly Mover[], kind: string): readonly BesideLine[] {
  return movers.flatMap(({ variant, points }) => {
    const { unknown, value } = variant;
    if (unknown.id !== "winterHumidity" || unknown.now === null || points.length < 2) return [];
    const damper = value > unknown.now;
    return [
      {
        words: `${share(value)} inside`,
        side: damper ? ("damper" as const) : ("drier" as const),
        points: measuredAt(points, kind),
      },
    ];
  });
}
