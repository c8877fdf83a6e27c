import { builtinModules } from "node:module";
import { defineConfig, type UserConfig } from "vite";

/**
 * Builds for Node and Electron, one a mode: `main` (an ES module), `preload` (one CommonJS file: a sandboxed preload can
 * import nothing but Electron), `cli` (the command line and its worker). The libraries are bundled; only Node's own
 * modules and `electron` stay imports.
 */
const file = (path: string): string => new URL(path, import.meta.url).pathname;

const external = ["electron", ...builtinModules, ...builtinModules.map((name) => `node:${name}`)];

interface Made {
  readonly entries: Readonly<Record<string, string>>;
  readonly format: "es" | "cjs";
  readonly fileName: string;
}

const made: Readonly<Record<string, Made>> = {
  main: { entries: { main: file("./main.ts"), serve: file("./local-server.ts") }, format: "es", fileName: "[name].js" },
  preload: { entries: { preload: file("./preload.ts") }, format: "cjs", fileName: "[name].cjs" },
  cli: {
    entries: { main: file("./cli/main.ts"), worker: file("./cli/worker.ts") },
    format: "es",
    fileName: "[name].js",
  },
};

export default defineConfig(({ mode }): UserConfig => {
  const part = made[mode];
  if (part === undefined) throw new Error(`mode must be one of ${Object.keys(made).join(", ")}, got ${mode}`);
  return {
    publicDir: false,
    // A library written as CommonJS asks for its file's name, which modules spell otherwise.
    define: part.format === "es" ? { __filename: "import.meta.filename" } : {},
    ssr: { noExternal: true, target: "node" },
    build: {
      target: "node20",
      minify: false,
      sourcemap: false,
      ssr: true,
      rolldownOptions: {
        input: { ...part.entries },
        external,
        output: { format: part.format, entryFileNames: part.fileName, chunkFileNames: "[name]-[hash].js" },
      },
    },
  };
});
