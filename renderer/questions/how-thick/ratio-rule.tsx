import { useId } from "react";
import {
  planeResistances,
  withThickness,
  withoutLayer,
  type Case,
  type CaseLayer,
  type CodeRow,
} from "../../../solver/index.ts";
import { hatchOf, hatchPaths } from "../../section/index.ts";
import { Sentence, share } from "../../units/index.ts";
import { useSize } from "../../plots/use-size.ts";

interface RatioRuleProps {
  readonly aCase: Case;
  readonly layer: CaseLayer;
  readonly board_m: number;
  readonly boardWords: string;
  readonly codeRow: CodeRow | null;
}

const height = 17;

/** Share of the resistance that stands outside of the condensing plane: of the board, and of the row of the table. */
export function RatioRule({ aCase, layer, board_m, boardWords, codeRow }: RatioRuleProps) {
  const [place, { width }] = useSize<HTMLDivElement>();
  const shareOf = ({ outside_m2KW, inside_m2KW }: ReturnType<typeof planeResistances>): number =>
    outside_m2KW / (outside_m2KW + inside_m2KW);
  const bare = planeResistances(withoutLayer(aCase, layer.id));
  const own = shareOf(planeResistances(withThickness(aCase, layer.id, board_m)));
  const implied = codeRow === null ? null : shareOf({ ...bare, outside_m2KW: bare.outside_m2KW + codeRow.least_m2KW });
  return (
    <section className="side-part">
      <div className="head">
        <h2>The ratio rule</h2>
        <span className="note">share of R that stands outside of the frame</span>
      </div>
      <div className="ratio-row">
        <span className="ratio-name strong">
          <Sentence text={boardWords} />
        </span>
        <div ref={place} className="ratio-place">
          <Bar aCase={aCase} layer={layer} share={own} width={width} strong />
        </div>
      </div>
      {implied !== null && (
        <div className="ratio-row">
          <span className="ratio-name">The row implies</span>
          <div className="ratio-place">
            <Bar aCase={aCase} layer={layer} share={implied} width={width} />
          </div>
        </div>
      )}
      <div className="ratio-row ratio-foot" aria-hidden="true">
        <span className="ratio-name" />
        <span className="outside">outside</span>
        <span className="inside">inside</span>
      </div>
    </section>
  );
}

function Bar({
  aCase,
  layer,
  share: outside,
  width,
  strong,
}: {
  aCase: Case;
  layer: CaseLayer;
  share: number;
  width: number;
  strong?: boolean;
}) {
  const id = useId();
  const split = Math.round(width * outside);
  const fill =
    aCase.layers.find((each) => each.id !== layer.id && /batt|cellulose|wool|fibre/i.test(each.material.id)) ?? layer;
  const rect = (x: number, wide: number) => ({ x, y: 0, width: wide, height, unit: 0.6 });
  const out = hatchPaths(hatchOf(layer.material, aCase.pathKind), rect(0, split));
  const inside = hatchPaths(hatchOf(fill.material, aCase.pathKind), rect(split, Math.max(0, width - split)));
  return (
    <svg width={width} height={height} role="img" aria-label={`${share(outside)} outside`}>
      <clipPath id={`${id}-out`}>
        <rect width={split} height={height} />
      </clipPath>
      <clipPath id={`${id}-in`}>
        <rect x={split} width={Math.max(0, width - split)} height={height} />
      </clipPath>
      <g clipPath={`url(#${id}-out)`}>
        <path className="hatch-stroke" d={out.stroke} />
      </g>
      <g clipPath={`url(#${id}-in)`}>
        <path className="hatch-stroke" d={inside.stroke} />
      </g>
      <rect
        className={strong ? "ratio-edge ratio-edge-strong" : "ratio-edge"}
        x={0.75}
        y={0.75}
        width={Math.max(0, width - 1.5)}
        height={height - 1.5}
      />
      <path className="ratio-edge ratio-edge-strong" d={`M${split} 0V${height}`} />
      <text className="ratio-figure" x={Math.max(20, split / 2)} y={height / 2 + 4}>
        {share(outside)}
      </text>
    </svg>
  );
}
