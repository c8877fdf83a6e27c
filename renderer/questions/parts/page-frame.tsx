import type { ReactNode } from "react";
import { Sentence } from "../../units/index.ts";
import { asDrawn, askWith, useQuestionInputs } from "../asking/question-inputs.ts";
import { splitAnswer } from "./split-answer.ts";
import { QuestionList } from "./question-list.tsx";

interface PageFrameProps {
  readonly sentence: ReactNode;
  /** The answer, the largest words of the window; null while there is none. */
  readonly answer: string | null;
  /** Runs are still under way: the answer may change. */
  readonly provisional?: boolean;
  readonly state: ReactNode;
  /** Under the list of questions. */
  readonly left?: ReactNode;
  readonly main: ReactNode;
  readonly side: ReactNode;
  /** True: the answer belongs to an earlier question. */
  readonly stale: boolean;
}

/** A question's page: the question, its answer, the picture, the tables that prove it. */
export function PageFrame({ sentence, answer, provisional, state, left, main, side, stale }: PageFrameProps) {
  const { place, humidity, paint_perm } = useQuestionInputs();
  const differs = place !== null || humidity !== null || paint_perm !== null;
  return (
    <div className={stale ? "questions questions-stale" : "questions"}>
      <div className="questions-left" data-pane="Questions">
        <nav aria-label="Questions">
          <QuestionList />
        </nav>
        {left}
      </div>
      <div className="questions-top" data-pane="Question and answer">
        <p className="question asked-sentence">{sentence}</p>
        <Answer text={answer} provisional={provisional === true} />
        <div className="questions-state">
          {state}
          {differs && (
            <p className="note">
              Marked words differ from the wall as drawn.{" "}
              <button
                type="button"
                className="verb"
                onClick={() =>
                  askWith({ place: asDrawn.place, humidity: asDrawn.humidity, paint_perm: asDrawn.paint_perm })
                }
              >
                Ask as drawn
              </button>
            </p>
          )}
        </div>
      </div>
      <div className="questions-main" data-pane="Picture">
        {main}
      </div>
      <div className="questions-side" data-pane="Tables">
        {side}
      </div>
    </div>
  );
}

/** The first sentence is the answer; what follows it is said smaller. */
function Answer({ text, provisional }: { text: string | null; provisional: boolean }) {
  const { first, rest } = splitAnswer(text ?? "");
  return (
    <div className="questions-answer" aria-live="polite">
      <h1 className="answer">
        {text === null ? (
          <span className="quiet">No answer yet.</span>
        ) : (
          <>
            {provisional && <span className="quiet">So far: </span>}
            <Sentence text={first} />
          </>
        )}
      </h1>
      {rest !== "" && (
        <p className="answer-rest">
          <Sentence text={rest} />
        </p>
      )}
    </div>
  );
}
