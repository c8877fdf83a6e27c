import { LineSample } from "./drawing/control-lines.tsx";
import { roleLetters, roleTitles, type ControlRun } from "./control-roles.ts";
import "./boundary-register.css";

function stateOf(run: ControlRun): string {
  if (run.layerIds.every((id) => id === null)) return "none";
  if (run.breaks > 0) return run.breaks === 1 ? "1 break" : `${run.breaks} breaks`;
  return run.bridgedBefore.includes(true) ? "bridged" : "unbroken";
}

/** The four control lines in words: which layer does it, or where it stops and what to do. */
export function BoundaryRegister({ runs }: { runs: readonly ControlRun[] }) {
  return (
    <section className="register" aria-label="Boundary">
      <h2 className="strong">Boundary</h2>
      <ul>
        {runs.map((run) => (
          <li key={run.role} className="register-row">
            <LineSample role={run.role} />
            <span className={`register-letter control-${run.role}`}>{roleLetters[run.role]}</span>
            <span className="register-title">{roleTitles[run.role]}</span>
            <span className="register-words">{run.words}</span>
            <span className={run.breaks > 0 ? "pencil" : "secondary"}>{stateOf(run)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
