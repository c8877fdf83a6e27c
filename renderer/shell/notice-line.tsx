import { useViewStore, view } from "../state/index.ts";
import "./notice-line.css";

/** One sentence about what just happened, until it is put away. */
export function NoticeLine() {
  const notice = useViewStore((state) => state.notice);
  return (
    <div className="notice-line" role="status" data-shown={notice !== null}>
      {notice !== null && (
        <>
          {notice}{" "}
          <button type="button" className="verb" onClick={() => view({ notice: null })}>
            Put away
          </button>
        </>
      )}
    </div>
  );
}
