import type { Project } from "../../../solver/index.ts";
import { freeOptionLetter } from "../../state/edits.ts";
import { applyEdit, view } from "../../state/index.ts";
import { Sentence } from "../../units/index.ts";
import { withBoardAsOption, withBoardInOption, type BoardToUse } from "./use-board.ts";

/** What to do with the board in view; each is one edit that can be undone. */
export function UseIt({ project, board }: { readonly project: Project; readonly board: BoardToUse }) {
  const letter = freeOptionLetter(project);
  const isThere = withBoardInOption(project, board) === project;
  return (
    <section className="left-part" aria-label="Use it">
      <h2 className="left-head">Use it</h2>
      {isThere ? (
        <p className="secondary">
          <Sentence text={`Option ${board.option} has ${board.words}`} />
        </p>
      ) : (
        <p>
          <button type="button" className="verb-marked" onClick={() => putBoardInOption(board)}>
            <Sentence text={`Put ${board.words} in option ${board.option}`} />
          </button>
        </p>
      )}
      {letter !== null && !isThere && (
        <p>
          <button type="button" className="verb-marked" onClick={() => makeBoardAnOption(board, letter)}>
            Make it option {letter}
          </button>
        </p>
      )}
    </section>
  );
}

function putBoardInOption(board: BoardToUse): void {
  applyEdit(`Put ${board.words} in option ${board.option}`, (project) => withBoardInOption(project, board));
}

function makeBoardAnOption(board: BoardToUse, letter: string): void {
  applyEdit(`Make ${board.words} option ${letter}`, (project) => withBoardAsOption(project, board)?.project ?? project);
  view({ option: letter });
}
