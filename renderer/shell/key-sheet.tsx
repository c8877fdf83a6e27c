import { commands, menuNames } from "../../electron/shared/index.ts";
import { keyWords } from "../commands/index.ts";

interface KeyRow {
  readonly label: string;
  readonly keys: string;
}

const onSheets: readonly KeyRow[] = [
  { label: "Sheets 1 to 6, outside of a field", keys: "1 to 6" },
  { label: "From row to row of a schedule", keys: "Up arrow, Down arrow" },
  { label: "From column to column", keys: "Left arrow, Right arrow" },
  { label: "Edit what stands in a row", keys: "Enter" },
  { label: "Leave a field as it was", keys: "Esc" },
  { label: "These keys", keys: "?" },
];

function Group({ title, rows }: { title: string; rows: readonly KeyRow[] }) {
  return (
    <section className="key-group">
      <h3>{title}</h3>
      <dl>
        {rows.map(({ label, keys }) => (
          <div key={label} className="key-row">
            <dt>{label}</dt>
            <dd>
              <kbd>{keys}</kbd>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** All keys, from the command table. */
export function KeySheet() {
  return (
    <div className="key-groups">
      <Group title="On the sheets" rows={onSheets} />
      {menuNames.map((menu) => {
        const rows = commands
          .filter((command) => command.menu === menu)
          .flatMap((command) => ("keys" in command ? [{ label: command.label, keys: keyWords(command.keys) }] : []));
        return rows.length > 0 && <Group key={menu} title={menu} rows={rows} />;
      })}
    </div>
  );
}
