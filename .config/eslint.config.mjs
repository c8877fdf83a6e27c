// Lint rules by room: pure code has no clock, no random and no host.
import tseslint from "typescript-eslint";
import reactHooks from "eslint-plugin-react-hooks";

const pureGlobals = [
  "performance",
  "Date",
  "process",
  "window",
  "document",
  "setTimeout",
  "setInterval",
  "console",
  "fetch",
];

export default tseslint.config(
  { ignores: ["**/dist/**", "**/node_modules/**"] },
  ...tseslint.configs.recommendedTypeChecked.map((config) => ({ ...config, files: ["**/*.ts", "**/*.tsx"] })),
  {
    files: ["**/*.ts", "**/*.tsx"],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: new URL("..", import.meta.url).pathname },
    },
    rules: {
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/restrict-template-expressions": "off",
      "@typescript-eslint/no-non-null-assertion": "off",
      "no-console": "error",
    },
  },
  {
    files: ["climate/**/*.ts", "solver/**/*.ts"],
    rules: {
      "no-restricted-globals": ["error", ...pureGlobals],
      "no-restricted-properties": ["error", { object: "Math", property: "random", message: "Seeds are inputs." }],
    },
  },
  {
    files: ["renderer/**/*.ts", "renderer/**/*.tsx"],
    plugins: { "react-hooks": reactHooks },
    rules: { "react-hooks/rules-of-hooks": "error", "react-hooks/exhaustive-deps": "error" },
  },
  {
    files: ["tests/**/*.ts", "tests/**/*.tsx", "electron/cli/**/*.ts"],
    rules: { "no-console": "off" },
  },
  {
    files: ["tests/**/*.ts", "tests/**/*.tsx"],
    rules: {
      "@typescript-eslint/require-await": "off",
      "@typescript-eslint/unbound-method": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-unsafe-member-access": "off",
    },
  },
);
