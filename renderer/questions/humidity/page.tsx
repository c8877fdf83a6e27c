import { useEffect, useMemo, useState } from "react";
import {
  decidingFindings,
  howHumid,
  together,
  withWinterHumidity,
  type Case,
  type HumidityAnswer,
  type MonthlyAir,
  type Study,
} from "../../../solver/index.ts";
import { applyEdit, pathInView, useUnits, view } from "../../state/index.ts";
import { share } from "../../units/index.ts";
import { askedCase, drawnValue } from "../asking/asked-case.ts";
import { criteria, kindsOf } from "../asking/criteria.ts";
import { askWith, useQuestionInputs } from "../asking/question-inputs.ts";
import { useStudy } from "../asking/use-study.ts";
import { CannotAsk } from "../parts/cannot-ask.tsx";
import { kindWords } from "../parts/finding-words.ts";
import { PageFrame } from "../parts/page-frame.tsx";
import { StudyLine } from "../parts/study-line.tsx";
import { useAskedCase, useWallInView, type WallInView } from "../parts/use-wall.ts";
import { AskedChoice } from "../sentence/asked-choice.tsx";
import { PlaceChoice } from "../sentence/place-choice.tsx";
import { PaintInput } from "../sentence/room-inputs.tsx";
import { WallChoice } from "../sentence/wall-choice.tsx";
import { HumidityFigure } from "./curve-figure.tsx";
import { MonthsFigure } from "./months-figure.tsx";
import { firstHumidityKind, humidityWords, limitText } from "./words.ts";

/** How humid may it be inside? The highest winter humidity that keeps each limit, and the owner's line by month. */
export function HumidityPage() {
  const wall = useWallInView();
  if (!wall.drawn.ok)
    return (
      <PageFrame
        sentence="How humid may it be inside?"
        answer={null}
        state={<CannotAsk issues={wall.drawn.issues} />}
        main={null}
        side={null}
        stale={false}
      />
    );
  return <Asked key={`${wall.option}/${wall.path}`} wall={wall} drawn={wall.drawn.case} />;
}

function Asked({ wall, drawn }: { wall: WallInView; drawn: Case }) {
  const inputs = useQuestionInputs();
  const units = useUnits();
  const aCase = useAskedCase(wall, { ...inputs, insulation: null, humidity: null });
  const [air, setAir] = useState<MonthlyAir | null>(null);
  const study = useMemo(
    () => (aCase === null ? null : howHumid({ case: aCase, hold: kindsOf(inputs.criterion), air })),
    [aCase, inputs.criterion, air],
  );
  const asked = useStudy<HumidityAnswer>(`humidity:${wall.option}/${wall.path}`, study, wall.mark);
  const found = asked?.air ?? null;
  useEffect(() => setAir(found), [found]);
  useEffect(() => view({ scale: "room in winter, 20 to 60 %" }), []);
  const [kindChosen, setKind] = useState<string | null>(null);
  if (asked === null) return null;
  const { answer } = asked;
  const kinds = answer?.limits.map(({ finding }) => finding) ?? [];
  const kind =
    answer === null ? "" : kindChosen !== null && kinds.includes(kindChosen) ? kindChosen : firstHumidityKind(answer);
  const most = Math.max(0, ...(answer?.points.map(({ winterHumidity }) => winterHumidity) ?? []));
  const room = drawnValue(drawn, "winterHumidity");
  const keeps = answer?.upTo == null ? null : Math.floor(100 * answer.upTo) / 100;
  const indoor = wall.project.indoor;
  return (
    <PageFrame
      stale={asked.status === "stale"}
      provisional={asked.status === "running"}
      answer={answer === null ? null : humidityWords(answer, inputs.criterion)}
      state={<StudyLine asked={asked} says="from a dry room to a damp one, and a search between" />}
      left={
        keeps !== null &&
        indoor !== undefined &&
        asked.status === "finished" &&
        keeps !== room && (
          <section className="left-part" aria-label="Use it">
            <h2 className="left-head">Use it</h2>
            <p>
              <button
                type="button"
                className="verb-marked"
                onClick={() =>
                  applyEdit(`Set the room to ${share(keeps)} in winter`, (project) =>
                    project.indoor ? { ...project, indoor: withWinterHumidity(project.indoor, keeps) } : project,
                  )
                }
              >
                Set the room to {share(keeps)}
              </button>
            </p>
            <p className="note">The wall as drawn stands at {room === null ? "a computed humidity" : share(room)}.</p>
          </section>
        )
      }
      sentence={
        <>
          How humid may it be in winter inside the{" "}
          <WallChoice project={wall.project} option={wall.option} path={wall.path} />, at{" "}
          <PlaceChoice project={wall.project} place={inputs.place} />,{" "}
          {drawnValue(drawn, "finishPermeance") !== null && (
            <>
              with <PaintInput aCase={drawn} inputs={inputs} units={units} />,{" "}
            </>
          )}
          so that{" "}
          <AskedChoice
            label="What must hold"
            value={inputs.criterion}
            choices={criteria}
            onChange={(criterion) => askWith({ criterion })}
          />
          ?
        </>
      }
      main={
        answer === null ? (
          <div className="nothing-yet curve-empty">Drawn as soon as a room has been run.</div>
        ) : (
          <>
            <HumidityFigure answer={answer} kind={kind} onKind={setKind} drawn={room} units={units} />
            <MonthsFigure answer={answer} />
          </>
        )
      }
      side={
        answer !== null && (
          <>
            <section className="side-part">
              <div className="head">
                <h2>Up to where each limit is kept</h2>
                <span className="note">room in winter</span>
              </div>
              <table className="side-table">
                <tbody>
                  {[...answer.limits]
                    .sort((one, other) => rank(one.upTo, one.beyondRange) - rank(other.upTo, other.beyondRange))
                    .map((limit) => (
                      <tr key={limit.finding} className={limit.finding === answer.governing ? "strong-row" : ""}>
                        <th scope="row">{kindWords(limit.finding).short}</th>
                        <td className="secondary">
                          {decidingFindings.includes(limit.finding) ? "decides" : "asks for a look"}
                        </td>
                        <td className="figure-cell">{limitText(limit, most)}</td>
                      </tr>
                    ))}
                </tbody>
              </table>
            </section>
            <OptionsTable wall={wall} />
            <section className="side-part">
              <h2 className="strong">What stands behind this</h2>
              <p>
                Winter humidity is that of the coldest weather; it rises with the weather to the summer's. The line by
                hand is a steady month: no storage, no drying, no leaking air. In deep cold windows sweat before walls
                do. Mould harms people: where it is seen or smelt, lower the humidity and find the cause.
              </p>
            </section>
          </>
        )
      }
    />
  );
}

const rank = (upTo: number | null, beyond: boolean): number => (beyond ? 2 : (upTo ?? -1));

/** The same question of every option, run when asked for. */
function OptionsTable({ wall }: { wall: WallInView }) {
  const inputs = useQuestionInputs();
  const { project, path, mark } = wall;
  const { place, paint_perm, criterion } = inputs;
  const study = useMemo((): Study<readonly HumidityAnswer[]> | null => {
    const cases = project.options.flatMap((each): Case[] => {
      const asked = askedCase(project, each.id, pathInView(each, path).id, {
        insulation: null,
        place,
        humidity: null,
        paint_perm,
      });
      return asked.ok ? [asked.case] : [];
    });
    return cases.length < 2
      ? null
      : together(
          "humidity-of-each",
          cases.map((aCase) => howHumid({ case: aCase, hold: kindsOf(criterion) })),
        );
  }, [project, path, place, paint_perm, criterion]);
  const asked = useStudy<readonly HumidityAnswer[]>(`humidity:each/${path}`, study, mark, false);
  if (asked === null) return null;
  return (
    <section className="side-part">
      <div className="head">
        <h2>Option by option</h2>
        <span className="note">the same question of each</span>
      </div>
      {asked.answer !== null && (
        <table className="side-table">
          <tbody>
            {asked.answer.map((each) => (
              <tr key={each.option} className={each.option === wall.option ? "strong-row" : ""}>
                <th scope="row">{each.option}</th>
                <td className="secondary">{project.options.find(({ id }) => id === each.option)?.name}</td>
                <td className="figure-cell">
                  {each.points.length < 2
                    ? "not known yet"
                    : each.upTo === null
                      ? "none tried"
                      : `${share(Math.floor(100 * each.upTo) / 100)}${each.beyondRange ? " and more" : ""}`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {asked.status !== "finished" && <StudyLine asked={asked} />}
    </section>
  );
}
