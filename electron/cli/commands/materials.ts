import { catalogue } from "../../../solver/index.ts";
import { exit, type Command } from "../command.ts";

/** Lists the catalogue, or the part of it that a word names. */
export const materials: Command = {
  name: "materials",
  takes: "[WORD] [--json]",
  summary: "list the catalogue, or what matches a word",
  positionals: { least: 0, most: 1 },
  options: { json: { type: "boolean", hint: "one JSON document, with sources" } },
  run(given, output) {
    const word = (given.positionals[0] ?? "").toLowerCase();
    const found = catalogue.filter((material) =>
      [material.id, material.name, material.group ?? ""].some((text) => text.toLowerCase().includes(word)),
    );
    if (given.flag("json")) {
      output.result(JSON.stringify({ format: "wallyear-materials", formatVersion: 1, materials: found }, null, 2));
      return Promise.resolve(exit.done);
    }
    if (found.length === 0) {
      output.note(`No material has "${word}" in its name. Run "wall materials" for all of them.`);
      return Promise.resolve(exit.issues);
    }
    const width = Math.max(...found.map((material) => material.id.length));
    const lines = found.map((material) => `${material.id.padEnd(width)}  ${material.kind.padEnd(8)}  ${material.name}`);
    output.result(lines.join("\n"));
    return Promise.resolve(exit.done);
  },
};
