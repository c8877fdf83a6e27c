import type { HourlyLoads } from "../../climate/index.ts";
import type { Case } from "../model/index.ts";
import { buildGrid, type Grid } from "./grid.ts";
import { logLinear } from "./vapour-transport.ts";
import { physicsSettings, type PhysicsSettings } from "./physics-settings.ts";
import { propertyTable, tableIntervals, tableStride, type PropertyTable } from "./property-table.ts";
import { wallSources, type WallSources } from "./sources.ts";
import { temperatureTable } from "./temperature-table.ts";

/** Permeance of a membrane over the mean RH of its faces: 256 even intervals, read by straight lines [kg/(m2 s Pa)]. */
export const membraneIntervals = 256;

/** What resists nothing still needs a finite conductance: 0.1 mm of a thin film is some 2e-4 m2 K/W. */
const openThermal_Wm2K = 5e3;
const openVapour_kgm2sPa = 1e-3;
/** Flow per unit of potential difference across a joint in capillary contact [kg/(m2 s)]. */
const openLiquid_kgm2s = 1;

/**
 * A wall ready to march: grid, tables and everything the balance reads, in flat arrays.
 * A slot is one material at one node; a node inside a layer has one, a node between two layers has two.
 */
export interface WallModel {
  readonly physics: PhysicsSettings;
  readonly grid: Grid;
  readonly nodes: number;
  readonly tables: readonly PropertyTable[];
  readonly temperature: Float64Array;
  readonly slots: number;
  readonly slotNode: Int32Array;
  readonly slotTable: Int32Array;
  /** Layer that each slot's storage belongs to. */
  readonly slotLayer: Int32Array;
  /** Thickness that each slot stores for [m]. */
  readonly slotVolume: Float64Array;
  /** Slots run from outside to inside; how many there are up to and with each node. */
  readonly slotEnd: Int32Array;
  /** Inner end's slot of each slice; -1 for thin elements. */
  readonly innerSlot: Int32Array;
  /** All property tables end to end, and all temperature factors of conductivity. */
  readonly rows: Float64Array;
  readonly warm: Float64Array;
  /** Per slot, `slotIndices` numbers: where its rows begin, where its temperature factors begin or -1, its flags. */
  readonly slotIndex: Int32Array;
  /** Per slot: thickness it stores for [m], dry heat capacity [J/(m3 K)]. */
  readonly slotNumber: Float64Array;
  /** 0 slice, 1 membrane, 2 contact. */
  readonly elementKind: Uint8Array;
  /** 1/length of slices [1/m]; 0 for thin elements. */
  readonly perLength: Float64Array;
  readonly thermalConductance: Float64Array;
  readonly vapourConductance: Float64Array;
  readonly liquidConductance: Float64Array;
  readonly membrane: readonly (Float64Array | null)[];
  /** Nodes that carry a film of dew or rain, and the potential from which they do. */
  readonly filmNodes: Int32Array;
  readonly filmFrom: Float64Array;
  /** Slot whose layer a film inside the wall counts with; -1 on the faces of the wall and where there is none. */
  readonly filmSlot: Int32Array;
  /** Nodes with nothing but skins around them. */
  readonly skinNodes: Int32Array;
  /**
   * Per node: the nearest solid layer outward and inward of it, the same twice inside a layer. Nodes at an interface, of skins and of
   * air spaces count half with each.
   */
  readonly solids: Int32Array;
  readonly solidCount: number;
  readonly sources: WallSources;
}

/** Numbers a slot holds in `slotIndex`, and its flags. */
export const slotIndices = 3;
export const followsSuctionFlag = 1;
export const absoluteVapourFlag = 2;

export function wallModel(aCase: Case, loads: HourlyLoads): WallModel {
  const lab = aCase.exposure.kind === "lab" ? aCase.exposure.lab.physics : undefined;
  const physics = physicsSettings(lab, loads.barometricPressure_Pa);
  const grid = buildGrid(aCase);
  const { elements } = grid;
  const nodes = elements.length + 1;
  const tables = aCase.layers.map((layer) => propertyTable(withAirSpace(layer.material, layer.thickness_m), physics));

  const slotNode: number[] = [];
  const slotTable: number[] = [];
  const slotVolume: number[] = [];
  const innerSlot = new Int32Array(elements.length).fill(-1);
  elements.forEach((element, e) => {
    if (element.kind !== "slice") return;
    const before = e > 0 && elements[e - 1]!.kind === "slice" && elements[e - 1]!.layer === element.layer;
    // Inside a layer the slot at the inner end of one slice is the one at the outer end of the next.
    if (before) slotVolume[slotVolume.length - 1]! += element.length_m / 2;
    else {
      slotNode.push(e);
      slotTable.push(element.layer);
      slotVolume.push(element.length_m / 2);
    }
    innerSlot[e] = slotNode.length;
    slotNode.push(e + 1);
    slotTable.push(element.layer);
    slotVolume.push(element.length_m / 2);
  });
  const slotEnd = new Int32Array(nodes);
  for (const node of slotNode) slotEnd[node]!++;
  for (let i = 1; i < nodes; i++) slotEnd[i]! += slotEnd[i - 1]!;

  const thermalConductance = new Float64Array(elements.length);
  const vapourConductance = new Float64Array(elements.length);
  const liquidConductance = new Float64Array(elements.length);
  const membrane = elements.map((element, e) => {
    const layer = aCase.layers[element.layer]!;
    if (element.kind === "slice") return null;
    if (element.kind === "contact") {
      const { thermal_m2KW, vapour_m2sPakg, liquid } = layer.contact!;
      thermalConductance[e] = thermal_m2KW > 0 ? 1 / thermal_m2KW : openThermal_Wm2K;
      vapourConductance[e] = vapour_m2sPakg > 0 ? 1 / vapour_m2sPakg : openVapour_kgm2sPa;
      // Water passes a joint only between two materials that draw it.
      const draws = tables[element.layer]!.movesLiquid && tables[element.layer + 1]!.movesLiquid;
      liquidConductance[e] = liquid && draws ? openLiquid_kgm2s : 0;
      return null;
    }
    const resistance = layer.material.thermalResistance_m2KW ?? 0;
    thermalConductance[e] = resistance > 0 ? 1 / resistance : openThermal_Wm2K;
    return membraneTable(layer.material.permeance_kgm2sPa ?? openVapour_kgm2sPa);
  });

  const from = filmFrom(aCase, grid, tables);
  const filmNodes = Int32Array.from(from.keys()).filter((node) => from[node]! < Infinity);
  return {
    physics,
    grid,
    nodes,
    tables,
    temperature: temperatureTable(physics),
    slots: slotNode.length,
    slotNode: Int32Array.from(slotNode),
    slotTable: Int32Array.from(slotTable),
    slotLayer: Int32Array.from(slotTable),
    slotVolume: Float64Array.from(slotVolume),
    slotEnd,
    innerSlot,
    elementKind: Uint8Array.from(elements, ({ kind }) => (kind === "slice" ? 0 : kind === "membrane" ? 1 : 2)),
    perLength: Float64Array.from(elements, ({ length_m }) => (length_m > 0 ? 1 / length_m : 0)),
    thermalConductance,
    vapourConductance,
    liquidConductance,
    membrane,
    filmNodes,
    filmFrom: Float64Array.from(filmNodes, (node) => from[node]!),
    filmSlot: filmNodes.map((node) => (node === 0 || node === nodes - 1 ? -1 : slotNode.lastIndexOf(node))),
    skinNodes: Int32Array.from(from.keys()).filter((node) => !slotNode.includes(node)),
    ...flatTables(tables, slotTable, slotVolume),
    ...solidLayers(aCase, grid),
    sources: wallSources(aCase, grid),
  };
}

function solidLayers(aCase: Case, grid: Grid) {
  const numbers: number[] = [];
  let solidCount = 0;
  for (const layer of aCase.layers) {
    numbers.push(layer.material.kind === "bulk" && layer.thickness_m > 0 ? solidCount++ : -1);
  }
  const nodes = grid.depth_m.length;
  const solids = new Int32Array(2 * nodes).fill(-1);
  const ofElement = (e: number) => {
    const element = grid.elements[e]!;
    return element.kind === "slice" ? numbers[element.layer]! : -1;
  };
  for (let i = 1; i < nodes; i++) solids[2 * i] = ofElement(i - 1) >= 0 ? ofElement(i - 1) : solids[2 * i - 2]!;
  for (let i = nodes - 2; i >= 0; i--) solids[2 * i + 1] = ofElement(i) >= 0 ? ofElement(i) : solids[2 * i + 3]!;
  for (let i = 0; i < nodes; i++) {
    const outward = solids[2 * i]!;
    const inward = solids[2 * i + 1]!;
    solids[2 * i] = Math.max(outward >= 0 ? outward : inward, 0);
    solids[2 * i + 1] = Math.max(inward >= 0 ? inward : outward, 0);
  }
  return { solids, solidCount: Math.max(solidCount, 1) };
}

function flatTables(tables: readonly PropertyTable[], slotTable: readonly number[], slotVolume: readonly number[]) {
  const size = (tableIntervals + 1) * tableStride;
  const rows = new Float64Array(size * 2 * tables.length);
  tables.forEach((table, i) => {
    rows.set(table.rows, 2 * i * size);
    rows.set(table.rowsAtFace, (2 * i + 1) * size);
  });
  const warmSize = tables.find((table) => table.warm !== null)?.warm?.length ?? 0;
  const warm = new Float64Array(warmSize * tables.length);
  tables.forEach((table, i) => table.warm !== null && warm.set(table.warm, i * warmSize));
  const slotIndex = new Int32Array(slotIndices * slotTable.length);
  const slotNumber = new Float64Array(2 * slotTable.length);
  slotTable.forEach((i, s) => {
    const table = tables[i]!;
    const atFace = slotTable[s - 1] !== i || slotTable[s + 1] !== i;
    slotIndex[slotIndices * s] = (2 * i + (atFace ? 1 : 0)) * size;
    slotIndex[slotIndices * s + 1] = table.warm === null ? -1 : i * warmSize;
    slotIndex[slotIndices * s + 2] =
      (table.followsSuction ? followsSuctionFlag : 0) | (table.absoluteVapour ? absoluteVapourFlag : 0);
    slotNumber[2 * s] = slotVolume[s]!;
    slotNumber[2 * s + 1] = table.dryHeatCapacity_Jm3K;
  });
  return { rows, warm, slotIndex, slotNumber };
}

/** Vapour path of a wide vertical air space: convection keeps it as open as 24 mm of still air (Lewis analogy, h_a 1.25 W/(m2 K); COMPUTED). */
const airSpaceEquivalent_m = 0.024;
/** Water that 1 m3 of air holds per unit of RH near 20 degC [kg/m3]. */
const airStorage_kgm3 = 0.0173;

/** An air space as a slab: its resistance spread over its depth, vapour-open, storing what air stores. */
function withAirSpace(material: Case["layers"][number]["material"], thickness_m: number) {
  if (material.kind !== "air") return material;
  const resistance = material.thermalResistance_m2KW ?? 0.18;
  return {
    ...material,
    conductivity_WmK: thickness_m / resistance,
    vapour: material.vapour ?? { resistanceFactor: Math.min(1, airSpaceEquivalent_m / thickness_m) },
    sorption: material.sorption ?? { slope_kgm3: airStorage_kgm3 },
  };
}

function membraneTable(permeance: number | readonly (readonly [number, number])[]): Float64Array {
  const at = typeof permeance === "number" ? () => permeance : logLinear(permeance);
  return Float64Array.from({ length: membraneIntervals + 1 }, (_, i) => at(i / membraneIntervals));
}

/** Dew stands on what holds no water from 99.9 % RH on. */
const dewFrom = 6.9;
/** A weathered face carries a film of rain or dew once its pores are full (suction 1 kPa). */
const rainFilmFrom = 11.8;

/** Films stand on faces of layers that draw no water: at interfaces, outer faces and between membranes, never inside a layer. */
function filmFrom(aCase: Case, grid: Grid, tables: readonly PropertyTable[]): Float64Array {
  const from = new Float64Array(grid.depth_m.length).fill(Infinity);
  aCase.layers.forEach((_, index) => {
    from[grid.firstNode[index]!] = dewFrom;
    from[grid.lastNode[index]!] = dewFrom;
  });
  tables.forEach((table, index) => {
    if (!table.drawsWater) return;
    from[grid.firstNode[index]!] = Infinity;
    from[grid.lastNode[index]!] = Infinity;
  });
  if (aCase.exposure.kind === "site") from[0] = Math.min(from[0]!, rainFilmFrom);
  return from;
}
