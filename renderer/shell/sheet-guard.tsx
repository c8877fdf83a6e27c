import { Component, type ReactNode } from "react";

interface GuardState {
  readonly message: string | null;
}

/** A fault in one sheet leaves the strip, the title block and the project standing. */
export class SheetGuard extends Component<{ children: ReactNode }, GuardState> {
  override state: GuardState = { message: null };

  static getDerivedStateFromError(error: unknown): GuardState {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (this.state.message === null) return this.props.children;
    return (
      <div className="sheet-fault" role="alert">
        <p className="lead">This sheet could not be drawn.</p>
        <p className="secondary">{this.state.message}</p>
        <p>
          The project is unharmed.{" "}
          <button type="button" className="verb" onClick={() => this.setState({ message: null })}>
            Draw it again
          </button>
        </p>
      </div>
    );
  }
}
