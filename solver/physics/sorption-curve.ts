import type { Material, Sorption } from "../materials/index.ts";
import { monotoneCurve } from "../numerics/monotone-curve.ts";
import {
  fullPoreSuction_Pa,
  humidityAt,
  potentialAt,
  potentialAtSuction,
  referenceTemperature_K,
} from "./moisture-potential.ts";

/** Above this humidity the curve runs over log suction, below over RH: an RH axis says nothing near saturation. */
const humidityWhereAxesJoin = 0.95;
/** Humidity from which condensate stands free in a material without capillary pores. */
const freeWaterHumidity = 0.9995;
/** Free water held per unit of potential (a factor e of suction): share of saturation for capillary materials, kg/m3 for the others. */
const freeWaterShare = 0.01;
const freeWaterOfOthers_kgm3 = 40;

/** How sharply free water begins, per unit of potential. */
const freeWaterSharpness = 2.5;

export interface SorptionCurve {
  /** Water content [kg/m3] over the potential (at the reference temperature). Never flat: condensate has somewhere to stay. */
  readonly waterAt: (potential: number) => number;
  /** The curve without free water beyond saturation, for transport properties. */
  readonly boundWaterAt: (potential: number) => number;
  /**
   * The curve at a face of a material that draws no water: condensate there stands as a film on the face or is drawn by the layer beside,
   * and does not fill half a slice. Elsewhere the same as `waterAt`.
   */
  readonly waterAtFace: (potential: number) => number;
  readonly drawsWater: boolean;
  /** Saturation of the pores that draw water [kg/m3]; null where the material has none. */
  readonly capillarySaturation_kgm3: number | null;
  /** True: the content follows suction; false: it follows relative humidity whatever the temperature. */
  readonly followsSuction: boolean;
}

/** Builds the storage curve of a material. Sources: forms of EN 15026:2007; Künzel (1995) for joining A and w_f materials. */
export function sorptionCurve(material: Material, rhoR: number): SorptionCurve {
  const bound = boundWater(material, rhoR);
  const wetEnd =
    bound.capillarySaturation_kgm3 === null
      ? potentialAt(freeWaterHumidity)
      : potentialAtSuction(fullPoreSuction_Pa, referenceTemperature_K, rhoR);
  const slope =
    bound.capillarySaturation_kgm3 === null ? freeWaterOfOthers_kgm3 : freeWaterShare * bound.capillarySaturation_kgm3;
  const waterAt = (potential: number) => bound.waterAt(potential) + freeWater(potential - wetEnd, slope);
  const { hygroscopicUpTo } = bound;
  const drawsWater =
    bound.capillarySaturation_kgm3 !== null && (hygroscopicUpTo === undefined || movesLiquid(material));
  return {
    ...bound,
    boundWaterAt: bound.waterAt,
    waterAt,
    waterAtFace: drawsWater ? waterAt : (potential) => bound.waterAt(Math.min(potential, hygroscopicUpTo ?? Infinity)),
    drawsWater,
  };
}

function movesLiquid({ liquid }: Material): boolean {
  return liquid !== undefined && !("absorption_kgm2s05" in liquid && liquid.absorption_kgm2s05 === 0);
}

/** Nothing well before the potential where water begins to stand free, a straight line well beyond it, never flat between. */
export function freeWater(beyond: number, slope: number): number {
  const scaled = freeWaterSharpness * beyond;
  return scaled > 30 ? slope * beyond : (slope / freeWaterSharpness) * Math.log1p(Math.exp(scaled));
}

interface BoundWater extends Pick<SorptionCurve, "waterAt" | "capillarySaturation_kgm3" | "followsSuction"> {
  /** Potential of the wettest point measured over RH; undefined where the curve is one of suction. */
  readonly hygroscopicUpTo?: number;
}

function boundWater(material: Material, rhoR: number): BoundWater {
  const sorption = material.sorption;
  const liquidFollowsSuction =
    material.liquid !== undefined &&
    ("conductivity_s" in material.liquid ||
      "lnConductivity" in material.liquid ||
      "saturatedConductivity_s" in material.liquid);
  if (sorption === undefined) return { ...notHygroscopic(material), followsSuction: false };
  if ("slope_kgm3" in sorption) {
    const { slope_kgm3 } = sorption;
    return {
      waterAt: (theta) => slope_kgm3 * humidityAt(theta),
      capillarySaturation_kgm3: null,
      followsSuction: liquidFollowsSuction,
    };
  }
  if ("suctionTerms" in sorption) return { ...fromSuctionTerms(sorption, rhoR), followsSuction: true };
  if ("suction_Pa" in sorption) return { ...fromSuctionPoints(sorption.suction_Pa, rhoR), followsSuction: true };
  return {
    ...fromHumidityPoints(sorption.relativeHumidity, material.freeSaturation_kgm3, rhoR),
    followsSuction: liquidFollowsSuction,
  };
}

/** Numerical placeholder for foams, fibres and metals: 1 % of the dry mass at 100 % RH, a tenth of it dry (ASSUMED). */
function notHygroscopic(material: Material) {
  const scale = 0.001 * Math.min(material.density_kgm3 ?? 1.2, 100);
  return {
    waterAt: (theta: number) => {
      const phi = humidityAt(theta);
      return (scale * phi) / (1.1 - phi);
    },
    capillarySaturation_kgm3: null,
  };
}

function fromSuctionTerms(sorption: Extract<Sorption, { suctionTerms: unknown }>, rhoR: number) {
  const { saturation_kgm3, suctionTerms } = sorption;
  return {
    waterAt: (theta: number) => {
      const suction = rhoR * referenceTemperature_K * Math.exp(-theta);
      let filled = 0;
      for (const term of suctionTerms) {
        filled += term.share * Math.pow(1 + Math.pow(term.scale_perPa * suction, term.n), -term.m);
      }
      return saturation_kgm3 * filled;
    },
    capillarySaturation_kgm3: saturation_kgm3,
  };
}

function fromSuctionPoints(points: readonly (readonly [number, number])[], rhoR: number) {
  const ordered = [...points].sort((a, b) => b[0] - a[0]);
  const theta = ordered.map(([suction]) => potentialAtSuction(suction, referenceTemperature_K, rhoR));
  const curve = monotoneCurve(
    theta,
    ordered.map(([, w]) => w),
  );
  const driest = ordered[0]!;
  const thetaDriest = theta[0]!;
  const phiDriest = humidityAt(thetaDriest);
  return {
    // Drier than the driest point the content falls in proportion to RH.
    waterAt: (at: number) => (at < thetaDriest ? (driest[1] * humidityAt(at)) / phiDriest : curve.at(at)),
    capillarySaturation_kgm3: Math.max(...ordered.map(([, w]) => w)),
  };
}

function fromHumidityPoints(
  given: readonly (readonly [number, number])[],
  freeSaturation_kgm3: number | undefined,
  rhoR: number,
) {
  const points = given.filter(([phi]) => phi > 0 && phi < 1).map(([phi, w]) => [phi, w] as const);
  const atSaturation = freeSaturation_kgm3 ?? given.find(([phi]) => phi === 1)?.[1] ?? null;
  const overHumidity = monotoneCurve([0, ...points.map(([phi]) => phi)], [0, ...points.map(([, w]) => w)]);
  const theta = points.map(([phi]) => potentialAt(phi));
  const water = points.map(([, w]) => w);
  if (atSaturation !== null) {
    const end = potentialAtSuction(fullPoreSuction_Pa, referenceTemperature_K, rhoR);
    const last = theta.at(-1);
    theta.push(last === undefined ? end : Math.max(end, last + 0.5));
    water.push(atSaturation);
  }
  const joined = [...points].reverse().find(([phi]) => phi <= humidityWhereAxesJoin) ?? points[0];
  if (theta.length === 0) return { waterAt: () => 0, capillarySaturation_kgm3: null };
  const hygroscopicUpTo = points.length > 0 ? potentialAt(points.at(-1)![0]) : -Infinity;
  const overSuction = monotoneCurve(theta, water);
  const joinAt = joined === undefined ? -Infinity : potentialAt(joined[0]);
  return {
    waterAt: (at: number) => (at <= joinAt ? overHumidity.at(humidityAt(at)) : overSuction.at(at)),
    capillarySaturation_kgm3: atSaturation,
    hygroscopicUpTo,
  };
}
