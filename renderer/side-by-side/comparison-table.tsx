import type { Units } from "../state/index.ts";
import { Sentence } from "../units/index.ts";
import { comparisonRows, type ComparedOption } from "./comparison-rows.ts";
import type { Member } from "./member.ts";
import type { OptionInView } from "./option-in-view.ts";

/** Figures of the options that have run, and the difference between the two in view. */
export function ComparisonTable({
  options,
  members,
  columns,
  units,
}: {
  options: readonly OptionInView[];
  members: ReadonlyMap<string, Member>;
  columns: readonly [number, number];
  units: Units;
}): React.JSX.Element | null {
  const compared = options.flatMap(({ id, wall, price_perM2, carbon_kgCO2ePerM2 }): ComparedOption[] => {
    const member = members.get(id);
    return member ? [{ member, wall, price_perM2, carbon_kgCO2ePerM2 }] : [];
  });
  if (compared.length === 0) return null;
  const ids = compared.map(({ member }) => member.id);
  const place = (column: number): number => ids.indexOf(options[column]?.id ?? "");
  const rows = comparisonRows(compared, place(columns[0]), place(columns[1]), units);
  return (
    <table className="pair-table">
      <thead>
        <tr>
          <th scope="col">
            <span className="visually-hidden">Figure</span>
          </th>
          {ids.map((id) => (
            <th key={id} scope="col">
              {id}
            </th>
          ))}
          <th scope="col">
            {options[columns[1]]?.id} − {options[columns[0]]?.id}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ label, values, difference }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            {values.map((value, index) => (
              <td key={ids[index]} className={index === place(columns[1]) ? "strong" : ""}>
                <Sentence text={value} />
              </td>
            ))}
            <td className="secondary">
              <Sentence text={difference} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
