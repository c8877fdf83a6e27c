import type { Material } from "../materials/index.ts";
import { metrePerInch } from "../units.ts";

const inches = (values: readonly number[]): readonly number[] => values.map((value) => value * metrePerInch);

/** Boards of the trade by kind of insulation [m]; the user's own list goes before it. Common practice, no source. */
const foamBoards_m = inches([0.5, 1, 1.5, 2, 2.5, 3, 4, 6, 8]);
const woolBoards_m = inches([1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8]);

/** Stock thicknesses of an insulation [m], rising. */
export function stockThicknesses_m(material: Material): readonly number[] {
  return /wool|fibre|fiber|cork/i.test(`${material.id} ${material.name}`) && !/foam/i.test(material.name)
    ? woolBoards_m
    : foamBoards_m;
}
