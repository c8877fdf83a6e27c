// The import arrows of the house. "a <- b" in DEVELOPERS.md reads "b imports a"; nothing points the other way.
const solverRooms = ["numerics", "materials", "model", "physics", "run", "assess", "studies", "report"];
const laterThan = (room) => solverRooms.slice(solverRooms.indexOf(room) + 1).join("|");

module.exports = {
  forbidden: [
    {
      name: "no-cycles",
      severity: "error",
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
    {
      name: "no-unresolved",
      severity: "error",
      from: { path: "^(climate|solver|renderer|electron)/" },
      to: { couldNotResolve: true, pathNot: "^(node:|electron$)" },
    },
    {
      name: "climate-knows-no-wall",
      severity: "error",
      from: { path: "^climate/" },
      to: { path: "^(solver|renderer|electron|tests)/" },
    },
    {
      name: "solver-is-pure",
      severity: "error",
      from: { path: "^solver/" },
      to: { path: "^(renderer|electron|tests)/" },
    },
    {
      name: "pure-rooms-use-no-node",
      severity: "error",
      from: { path: "^(climate|solver)/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "climate-by-its-door",
      severity: "error",
      from: { path: "^(solver|renderer|electron)/" },
      to: { path: "^climate/", pathNot: "^climate/index\\.ts$" },
    },
    ...solverRooms.slice(0, -1).map((room) => ({
      name: `solver-${room}-uses-only-what-stands-before-it`,
      severity: "error",
      from: { path: `^solver/${room}/` },
      to: { path: `^solver/(${laterThan(room)})/` },
    })),
    {
      name: "renderer-takes-the-solver-by-its-door",
      severity: "error",
      from: { path: "^renderer/" },
      to: { path: "^solver/", pathNot: "^solver/index\\.ts$" },
    },
    {
      name: "renderer-knows-no-electron",
      severity: "error",
      from: { path: "^renderer/" },
      to: { path: "^electron/", pathNot: "^electron/shared/" },
    },
    {
      name: "only-plot-touches-plotly",
      severity: "error",
      from: { path: "^renderer/", pathNot: "^renderer/plots/plot(ly)?\\.tsx?$" },
      to: { path: "plotly" },
    },
    {
      name: "main-never-solves",
      severity: "error",
      from: { path: "^electron/(?!cli/|shared/|tools/)" },
      to: { path: "^solver/", pathNot: "^solver/model/index\\.ts$" },
    },
    {
      name: "shared-is-a-leaf",
      severity: "error",
      from: { path: "^electron/shared/" },
      to: { path: "^(renderer|electron/(?!shared/)|tests)" },
    },
    {
      name: "cli-by-the-doors",
      severity: "error",
      from: { path: "^electron/cli/" },
      to: { path: "^(renderer|tests)/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)dist/" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "types", "node", "default"] },
  },
};
