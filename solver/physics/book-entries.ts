/** Where water and heat come in or leave, in the order of the balance's rate arrays. Positive into the wall. */
export const waterEntries = [
  "outside vapour",
  "outside rain taken up",
  "outside air flow",
  "inside vapour",
  "inside water taken up",
  "inside air flow",
  "air leak",
  "rain leak",
  "cavity air",
] as const;

export const heatEntries = [
  "outside air",
  "outside sun",
  "outside longwave",
  "outside moisture",
  "inside air",
  "inside radiation",
  "inside moisture",
  "air flow",
  "air leak",
  "rain leak",
  "cavity air",
  "moving water",
] as const;

export type WaterEntry = (typeof waterEntries)[number];
export type HeatEntry = (typeof heatEntries)[number];

export const waterIndex = Object.fromEntries(waterEntries.map((entry, i) => [entry, i])) as Record<WaterEntry, number>;
export const heatIndex = Object.fromEntries(heatEntries.map((entry, i) => [entry, i])) as Record<HeatEntry, number>;
