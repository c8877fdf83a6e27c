import { useViewStore, view, type QuestionId } from "../../state/index.ts";

const questions: readonly (readonly [QuestionId, string])[] = [
  ["howThick", "How thick?"],
  ["drying", "Which way does it dry?"],
  ["whatIf", "What if we are wrong?"],
  ["humidity", "How humid may it be inside?"],
];

/** The questions, and which is in view. */
export function QuestionList() {
  const current = useViewStore((state) => state.question);
  return (
    <ul className="question-list">
      {questions.map(([id, words]) => (
        <li key={id}>
          <button
            type="button"
            className="question-tab"
            aria-current={id === current ? "page" : undefined}
            onClick={() => view({ question: id })}
          >
            {words}
          </button>
        </li>
      ))}
    </ul>
  );
}
