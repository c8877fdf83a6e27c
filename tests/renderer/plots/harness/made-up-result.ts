import type { Case, ProbeSeries, RunResult } from "../../../../solver/index.ts";

/**
 * A smooth, invented result for looking at charts while no run is at hand. It follows no physics beyond a plausible shape:
 * a straight line between a made-up outdoor year and a room. Never a figure to rely on.
 */
export function madeUpResult(aCase: Case, heldDays = 365): RunResult {
  const startDay = 273;
  const hours = 24 * heldDays;
  let depth = 0;
  const faces = aCase.layers.map((layer) => {
    const from = depth;
    depth += layer.thickness_m;
    return { layer, from, to: depth };
  });
  let seed = 7;
  const random = (): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed / 4294967296;
  };
  const noise = Array.from({ length: 366 }, () => random() - 0.5);
  const slow = Array.from(
    { length: 366 },
    (_, day) => noise.slice(Math.max(0, day - 4), day + 4).reduce((a, b) => a + b, 0) / 3,
  );
  const season = (day: number): number => Math.cos((2 * Math.PI * (day + startDay - 20)) / 365);
  const foam = aCase.layers.some(({ id }) => id === "ci");
  const resistance = aCase.layers.map(
    (layer) =>
      layer.thickness_m /
      (layer.material.kind === "air" ? 0.3 : (layer.material.density_kgm3 ?? 500) < 60 ? 0.035 : 0.13),
  );
  const total = resistance.reduce((a, b) => a + b, 0);
  const shareAt = (x: number): number => {
    let sum = 0;
    for (const [i, face] of faces.entries()) {
      if (x <= face.to && face.to > face.from)
        return (sum + (resistance[i]! * (x - face.from)) / (face.to - face.from)) / total;
      sum += resistance[i]!;
    }
    return 1;
  };
  const at = (x: number, hour: number): { t: number; rh: number } => {
    const day = Math.floor(hour / 24);
    const outdoor = 8 - 15 * season(day) + 9 * slow[day % 366]! + 4 * Math.cos((2 * Math.PI * ((hour % 24) - 14)) / 24);
    const indoor = 22 - season(day);
    const share = shareAt(x);
    const t = outdoor + (indoor - outdoor) * share;
    const bump = Math.exp(-(((x - faces.find(({ layer }) => layer.id === "sheathing")!.to) / 0.02) ** 2));
    const rh =
      0.72 +
      0.12 * slow[day % 366]! * (1 - share) * 2 -
      0.3 * share +
      0.14 * season(day) * (bump * (foam ? 1 : 1.9) - share * 0.9) +
      0.02 * bump;
    return { t, rh: Math.min(0.99, Math.max(0.1, rh)) };
  };
  const density = (id: string): number | null =>
    aCase.layers.find((layer) => layer.id === id)?.material.wood === true
      ? (aCase.layers.find((layer) => layer.id === id)!.material.density_kgm3 ?? null)
      : null;
  const waterOf = (id: string, rh: number): number => {
    const dry = aCase.layers.find((layer) => layer.id === id)?.material.density_kgm3 ?? 1;
    return density(id) ? dry * (0.05 + 0.11 * rh ** 2 + 0.12 * rh ** 12) : dry * 0.02 * rh;
  };
  const probe = (
    id: string,
    label: string,
    layer: string,
    side: ProbeSeries["side"],
    x: number,
    kind: ProbeSeries["kind"],
  ): ProbeSeries => {
    const T_C = new Float32Array(hours);
    const RH = new Float32Array(hours);
    const w = new Float32Array(hours);
    for (let hour = 0; hour < hours; hour++) {
      const { t, rh } = at(x, hour);
      T_C[hour] = t;
      RH[hour] = rh;
      w[hour] = waterOf(layer, kind === "layerMean" ? rh * 0.97 : rh);
    }
    return { id, label, layer, side, depth_m: x, kind, T_C, RH, w_kgm3: w, woodDensity_kgm3: density(layer) };
  };
  const columns: { x: number; layer: string }[] = faces.flatMap(({ layer, from, to }) =>
    to > from
      ? Array.from({ length: 12 }, (_, i) => ({ x: from + ((i + 0.5) / 12) * (to - from), layer: layer.id }))
      : [],
  );
  const map = {
    days: heldDays,
    depth_m: Float32Array.from(columns, ({ x }) => x),
    T_C: new Float32Array(heldDays * columns.length),
    RH: new Float32Array(heldDays * columns.length),
    w_kgm3: new Float32Array(heldDays * columns.length),
  };
  for (let day = 0; day < heldDays; day++)
    columns.forEach(({ x, layer }, column) => {
      const { t, rh } = at(x, 24 * day + 12);
      map.T_C[day * columns.length + column] = t - 2;
      map.RH[day * columns.length + column] = rh;
      map.w_kgm3[day * columns.length + column] = waterOf(layer, rh);
    });
  const months = Array.from({ length: 12 }, (_, m) => m);
  const book = { in: 1, out: 1, stored: 0, closure: 0, byFaceAndSource: {} };
  return {
    caseHash: "made-up",
    option: aCase.option,
    path: aCase.path,
    status: heldDays < 365 ? "failed" : "finished",
    failure:
      heldDays < 365
        ? {
            hour: hours + 4,
            date: "15 February",
            layer: "gypsum",
            cause: "a made-up cause",
            remedy: "A made-up remedy.",
          }
        : null,
    hours,
    startDay,
    judgedFrom: 0,
    judgedHours: 8760,
    probes: faces.flatMap(({ layer, from, to }) => [
      probe(`${layer.id}-outside`, `Outer face of ${layer.name}`, layer.id, "outside", from, "interface"),
      ...(to > from ? [probe(`${layer.id}-mean`, layer.name, layer.id, null, (from + to) / 2, "layerMean")] : []),
      probe(`${layer.id}-inside`, `Inner face of ${layer.name}`, layer.id, "inside", to, "interface"),
    ]),
    map,
    water: book,
    heat: book,
    monthly: {
      interfaces: aCase.layers.flatMap(({ id }) =>
        ["outside", "inside"].map((side) => ({
          probe: `${id}-${side}`,
          vapour: months.map((m) =>
            side === "outside" ? -0.05 * (foam ? 0.3 : 1) * (1 - Math.cos((m - 1) / 2)) : 0.06 * Math.sin((m - 5) / 2),
          ),
          liquid: months.map(() => 0),
        })),
      ),
      sources: [],
      stored: [],
      heatFromRoom_MJm2: months.map((m) => 20 + 15 * season(30 * m)),
    },
    yearEndWater_kgm2: [1, 1],
    log: { cells: columns.length, steps: 1, rejected: 0, iterations: 1, seconds: 0 },
  };
}
