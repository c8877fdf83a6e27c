import { useEffect, useMemo } from "react";
import { say, wettings, type Case, type DryingAnswer } from "../../../solver/index.ts";
import { monthNames } from "../../plots/calendar.ts";
import { pathInView, useUnits, useViewStore, view } from "../../state/index.ts";
import { Sentence, share } from "../../units/index.ts";
import { askedCase } from "../asking/asked-case.ts";
import { askWith, useQuestionInputs } from "../asking/question-inputs.ts";
import { useStudy } from "../asking/use-study.ts";
import { CannotAsk } from "../parts/cannot-ask.tsx";
import { PageFrame } from "../parts/page-frame.tsx";
import { plainName } from "../parts/plain-name.ts";
import { StudyLine } from "../parts/study-line.tsx";
import { useWallInView } from "../parts/use-wall.ts";
import { AskedChoice } from "../sentence/asked-choice.tsx";
import { PlaceChoice } from "../sentence/place-choice.tsx";
import { unitSystem } from "../how-thick/view-model.ts";
import { dryingStudy, testDates, wettableLayers, wettedLayerOf } from "./asked-drying.ts";
import { DaysFigure, daysText } from "./days-figure.tsx";
import { dryingWords } from "./words.ts";
import { WaterFigure } from "./water-figure.tsx";

const wettingWords: Readonly<Record<string, string>> = {
  rainedOn: "rained on before it is closed, to 25 %",
  windowLeakMonth: "wetted by a month of a leaking window, 1 kg/m²",
  wetCellulose: "closed in damp, 5 kg/m² of water",
};

/** Which way does it dry? A wetting followed to dry, option by option, beside the ordinary year. */
export function DryingPage() {
  const wall = useWallInView();
  const inputs = useQuestionInputs();
  const units = useUnits();
  const pathId = useViewStore((state) => state.path);
  const { project, option } = wall;
  const { place, humidity, paint_perm, dryingOptions, wettedLayer, wetting, wettingDate } = inputs;
  const cases = useMemo(
    () =>
      project.options
        .filter(({ id }) => dryingOptions === "all" || id === option)
        .flatMap((each): Case[] => {
          const asked = askedCase(project, each.id, pathInView(each, pathId).id, {
            insulation: null,
            place,
            humidity,
            paint_perm,
          });
          return asked.ok ? [asked.case] : [];
        }),
    [project, option, pathId, dryingOptions, place, humidity, paint_perm],
  );
  const study = useMemo(
    () => dryingStudy(cases, wettedLayer, wetting, wettingDate),
    [cases, wettedLayer, wetting, wettingDate],
  );
  const asked = useStudy<DryingAnswer>(
    `drying:${dryingOptions === "all" ? "all" : option}/${wall.path}`,
    study,
    wall.mark,
  );
  useEffect(() => view({ scale: "one scale for all options" }), []);

  const own = wall.drawn.ok ? wall.drawn.case : null;
  const layer = own === null ? null : wettedLayerOf(own, wettedLayer);
  if (own === null || layer === null || asked === null)
    return (
      <PageFrame
        sentence="Which way does it dry?"
        answer={null}
        state={
          wall.drawn.ok ? (
            <p>No layer of this path holds water. Choose another path in the title block.</p>
          ) : (
            <CannotAsk issues={wall.drawn.issues} />
          )
        }
        main={null}
        side={null}
        stale={false}
      />
    );
  const { answer } = asked;
  const known = wettings.find(({ id }) => id === wetting) ?? wettings[0]!;
  return (
    <PageFrame
      stale={asked.status === "stale"}
      provisional={asked.status === "running"}
      answer={answer === null ? null : dryingWords(answer, unitSystem(units))}
      state={<StudyLine asked={asked} says="a wetted and an ordinary year of each" />}
      sentence={
        <>
          Which way{" "}
          <AskedChoice
            label="Options"
            value={dryingOptions}
            choices={[
              { value: "all", words: project.options.length > 1 ? "does every option" : `does ${option}` },
              { value: "this", words: `does ${option} alone` },
            ]}
            onChange={(chosen) => askWith({ dryingOptions: chosen })}
          />{" "}
          dry at <PlaceChoice project={project} place={place} />, when its{" "}
          <AskedChoice
            label="Layer that gets wet"
            value={layer.id}
            choices={wettableLayers(own).map((each) => ({ value: each.id, words: plainName(each.name) }))}
            onChange={(chosen) => askWith({ wettedLayer: chosen })}
          />{" "}
          is{" "}
          <AskedChoice
            label="How it gets wet"
            value={known.id}
            choices={wettings.map(({ id, label }) => ({ value: id, words: wettingWords[id] ?? label.toLowerCase() }))}
            onChange={(chosen) => askWith({ wetting: chosen })}
          />{" "}
          on{" "}
          <AskedChoice
            label="Date of the wetting"
            value={wettingDate}
            choices={testDates.map((date) => ({
              value: date,
              words: `1 ${monthNames[Number(date.slice(0, 2)) - 1]!}`,
            }))}
            onChange={(chosen) => askWith({ wettingDate: chosen })}
          />
          ?
        </>
      }
      main={
        answer === null ? (
          <div className="nothing-yet curve-empty">Drawn as soon as a year has been run.</div>
        ) : (
          <>
            <WaterFigure answer={answer} units={units} />
            <DaysFigure answer={answer} />
          </>
        )
      }
      side={
        answer !== null && (
          <>
            <section className="side-part">
              <div className="head">
                <h2>From wet to dry</h2>
                <span className="note">to the room: of what leaves, March to June</span>
              </div>
              <table className="side-table">
                <thead>
                  <tr>
                    <th scope="col">Option</th>
                    <th scope="col" className="figure-cell">
                      to 20 %
                    </th>
                    <th scope="col" className="figure-cell">
                      to 16 %
                    </th>
                    <th scope="col" className="figure-cell">
                      to the room
                    </th>
                  </tr>
                </thead>
                <tbody>
                  {answer.rows.map((row) => (
                    <tr key={row.option} className={row.option === answer.order[0] ? "strong-row" : ""}>
                      <th scope="row">{row.option}</th>
                      <td className="figure-cell">{daysText(row, 20)}</td>
                      <td className="figure-cell">{daysText(row, 16)}</td>
                      <td className="figure-cell">{row.inwardShare === null ? "—" : share(row.inwardShare)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </section>
            {answer.rows.map((row) => (
              <section key={row.option} className="side-part">
                <h2 className="strong">
                  {row.option} {row.optionName}
                </h2>
                <p>
                  <Sentence text={`The ${plainName(row.layerName)}. ${say(row.sentence, unitSystem(units))}`} />
                </p>
              </section>
            ))}
            <section className="side-part">
              <h2 className="strong">What stands behind this</h2>
              <p>
                {known.label}: {known.source}. The books of every month close to{" "}
                {(100 * answer.worstClosure).toPrecision(1)} % of the water that moved. A wall seldom gets wet all over:
                this is a test of how it dries, not a forecast. Wood that stays wet decays and grows mould; open it up
                and let it dry before it is closed.
              </p>
            </section>
          </>
        )
      }
    />
  );
}
