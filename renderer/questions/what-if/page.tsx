import { useEffect, useMemo } from "react";
import { broken, say, unknownsOf, type WhatIfAnswer } from "../../../solver/index.ts";
import { useUnits, view, type Units } from "../../state/index.ts";
import { Sentence, share } from "../../units/index.ts";
import { askWith, useQuestionInputs } from "../asking/question-inputs.ts";
import { useStudy } from "../asking/use-study.ts";
import { unitSystem } from "../how-thick/view-model.ts";
import { CannotAsk } from "../parts/cannot-ask.tsx";
import { kindWords } from "../parts/finding-words.ts";
import { PageFrame } from "../parts/page-frame.tsx";
import { StudyLine } from "../parts/study-line.tsx";
import { rewordFlows, unknownText } from "../parts/unknown-words.ts";
import { useAskedCase, useWallInView } from "../parts/use-wall.ts";
import { AskedChoice } from "../sentence/asked-choice.tsx";
import { PlaceChoice } from "../sentence/place-choice.tsx";
import { WallChoice } from "../sentence/wall-choice.tsx";
import { rangesAsked, whatIfStudy } from "./asked-what-if.ts";
import { BarsFigure } from "./bars-figure.tsx";
import { RangesTable } from "./ranges-table.tsx";

/** What if we are wrong? Each unknown at both ends, everything bad at once, and what turns the answer over. */
export function WhatIfPage() {
  const wall = useWallInView();
  const inputs = useQuestionInputs();
  const units = useUnits();
  const aCase = useAskedCase(wall, { ...inputs, insulation: null });
  const { most, sampleRuns, notKnown, ranges } = inputs;
  const study = useMemo(
    () => (aCase === null ? null : whatIfStudy(aCase, { most, sampleRuns, notKnown, ranges })),
    [aCase, most, sampleRuns, notKnown, ranges],
  );
  const applicable = useMemo(() => (aCase === null ? [] : unknownsOf(aCase, rangesAsked(ranges))), [aCase, ranges]);
  const asked = useStudy<WhatIfAnswer>(`whatIf:${wall.option}/${wall.path}`, study, wall.mark);
  useEffect(() => view({ scale: "points against the wall as drawn" }), []);
  if (asked === null || !wall.drawn.ok)
    return (
      <PageFrame
        sentence="What if we are wrong?"
        answer={null}
        state={<CannotAsk issues={wall.drawn.issues} />}
        main={null}
        side={null}
        stale={false}
      />
    );
  const { answer } = asked;
  return (
    <PageFrame
      stale={asked.status === "stale"}
      provisional={asked.status === "running"}
      answer={answer === null ? null : rewordFlows(say(answer.lead, unitSystem(units)), units)}
      state={<StudyLine asked={asked} says="each input at both ends, the bad side, and where the answer turns" />}
      sentence={
        <>
          What if we are wrong about{" "}
          <AskedChoice
            label="How many inputs"
            value={String(most)}
            choices={[4, 6, 8, 12, 16].map((count) => ({ value: String(count), words: `the first ${count} inputs` }))}
            onChange={(chosen) => askWith({ most: Number(chosen) })}
          />{" "}
          of the <WallChoice project={wall.project} option={wall.option} path={wall.path} />, at{" "}
          <PlaceChoice project={wall.project} place={inputs.place} />, one at a time and{" "}
          <AskedChoice
            label="Sample of all inputs at once"
            value={String(sampleRuns)}
            choices={[
              { value: "0", words: "not all at once" },
              { value: "16", words: "all at once in 16 ways" },
              { value: "32", words: "all at once in 32 ways" },
              { value: "64", words: "all at once in 64 ways" },
            ]}
            onChange={(chosen) => askWith({ sampleRuns: Number(chosen) })}
          />
          ?
        </>
      }
      main={
        answer === null || answer.base === null ? (
          <div className="nothing-yet curve-empty">Drawn as soon as the wall as drawn has been run.</div>
        ) : (
          <div className="bars-main">
            <BarsFigure answer={answer} units={units} />
          </div>
        )
      }
      side={
        <>
          {answer !== null && <Turns answer={answer} units={units} complete={asked.status === "finished"} />}
          {answer?.band && <Sample answer={answer} />}
          <RangesTable applicable={applicable} inputs={inputs} units={units} />
        </>
      }
    />
  );
}

/** What turns the answer over, and the wall with everything on the bad side. */
function Turns({ answer, units, complete }: { answer: WhatIfAnswer; units: Units; complete: boolean }) {
  const worst = answer.pessimist;
  const peak = worst?.summary.peakMoisture_percent ?? null;
  const brokenKinds =
    worst === null ? [] : [...new Set(broken(worst.summary).map(({ id }) => kindWords(id).short.toLowerCase()))];
  return (
    <section className="side-part">
      <div className="head">
        <h2>What turns it over</h2>
        <span className="note">nearest to what is drawn first</span>
      </div>
      {answer.flips.length === 0 ? (
        <p>{complete ? "No single input within its range." : "Not known yet."}</p>
      ) : (
        <table className="side-table">
          <tbody>
            {answer.flips.map(({ unknown, value }) => (
              <tr key={unknown.id}>
                <th scope="row">{unknown.label}</th>
                <td className="figure-cell strong">{unknownText(unknown, value, units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {worst !== null && (
        <p className="why">
          <b>With everything on the bad side</b>
          {peak === null ? "" : ` the wood peaks at ${peak.toFixed(0)} %;`}{" "}
          {brokenKinds.length === 0 ? "every limit that decides is kept" : `not kept: ${brokenKinds.join(", ")}`}.{" "}
          <span className="secondary">
            <Sentence text={`${rewordFlows(worst.made, units)}.`} />
          </span>
        </p>
      )}
    </section>
  );
}

/** The spread of the sample, and what it follows. */
function Sample({ answer }: { answer: WhatIfAnswer }) {
  const band = answer.band!;
  const figures = band.peakMoisture_percent.every(Number.isFinite)
    ? band.peakMoisture_percent.map((value) => `${value.toFixed(0)} %`)
    : band.thirtyDayHumidity.map((value) => share(value));
  const [low, middle, high] = figures;
  return (
    <section className="side-part">
      <div className="head">
        <h2>All at once</h2>
        <span className="note">{band.runs} runs</span>
      </div>
      <p>
        Of ten such walls, eight peak between {low} and {high}, half of them under {middle}. Every limit that decides is
        kept in {share(band.holdingShare)}.
        {band.ranking !== null &&
          ` The spread follows ${band.ranking.inputs
            .slice(0, 2)
            .map(({ label }) => label.charAt(0).toLowerCase() + label.slice(1))
            .join(", then ")}.`}
      </p>
    </section>
  );
}
