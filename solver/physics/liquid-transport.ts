import type { Liquid, Material } from "../materials/index.ts";
import { monotoneCurve, polyline } from "../numerics/monotone-curve.ts";
import { humidityAt, potentialAtSuction, referenceTemperature_K } from "./moisture-potential.ts";
import type { SorptionCurve } from "./sorption-curve.ts";

/**
 * Flow potential of the liquid Psi [kg/(m s)]: the flux between two points a distance L apart in one material is the difference
 * of Psi over L, whatever K does between them. dPsi = K ds for a conductivity, dPsi = D_w dw for a diffusivity.
 *
 * The Kirchhoff transform keeps steep wetting fronts right on a coarse grid, where K changes by orders of magnitude from cell to cell.
 */
export type LiquidSlope = (potential: number) => number;

/** dPsi/dtheta [kg/(m s)] at the reference temperature; null: the material moves no liquid. */
export function liquidSlope(material: Material, sorption: SorptionCurve, rhoR: number): LiquidSlope | null {
  const liquid = material.liquid;
  if (liquid === undefined) return null;
  if ("absorption_kgm2s05" in liquid) return fromAbsorption(liquid.absorption_kgm2s05, material, sorption);
  if ("diffusivity_m2s" in liquid) return fromDiffusivity(liquid.diffusivity_m2s, sorption);
  const conductivity = conductivityOf(liquid, sorption, rhoR);
  return (theta) => conductivity(theta) * rhoR * referenceTemperature_K * Math.exp(-theta);
}

/** Künzel (1995): D = 3.8 (A/w_f)^2 1000^(w/w_f - 1); needs a free saturation. */
function fromAbsorption(A: number, material: Material, sorption: SorptionCurve): LiquidSlope | null {
  const wf = material.freeSaturation_kgm3 ?? sorption.capillarySaturation_kgm3;
  if (A === 0) return null;
  if (wf === null) throw new RangeError(`${material.name}: a water absorption coefficient needs a free saturation`);
  const atSaturation = 3.8 * (A / wf) ** 2;
  return (theta) => {
    const share = Math.min(sorption.boundWaterAt(theta) / wf, 1);
    return atSaturation * Math.exp(Math.log(1000) * (share - 1)) * waterSlope(sorption, theta);
  };
}

function fromDiffusivity(given: number | readonly (readonly [number, number])[], sorption: SorptionCurve): LiquidSlope {
  if (typeof given === "number") return (theta) => given * waterSlope(sorption, theta);
  const curve = polyline(
    given.map(([w]) => w),
    given.map(([, d]) => Math.log(Math.max(d, 1e-30))),
  );
  return (theta) => Math.exp(curve.at(sorption.boundWaterAt(theta))) * waterSlope(sorption, theta);
}

function waterSlope(sorption: SorptionCurve, theta: number): number {
  const step = 1e-4;
  return Math.max((sorption.boundWaterAt(theta + step) - sorption.boundWaterAt(theta - step)) / (2 * step), 0);
}

type ConductivityForm = Exclude<Liquid, { absorption_kgm2s05: number } | { diffusivity_m2s: unknown }>;

/** K [s] over the potential. */
function conductivityOf(liquid: ConductivityForm, sorption: SorptionCurve, rhoR: number): (theta: number) => number {
  const suctionAt = (theta: number) => rhoR * referenceTemperature_K * Math.exp(-theta);
  if ("lnConductivity" in liquid) {
    const { coefficients, origin_kgm3, scale_kgm3 } = liquid.lnConductivity;
    return (theta) => {
      const z = (sorption.boundWaterAt(theta) - origin_kgm3) / scale_kgm3;
      let sum = 0;
      for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * z + coefficients[i]!;
      return Math.exp(sum);
    };
  }
  if ("saturatedConductivity_s" in liquid) {
    const { scale_perPa, n, m } = liquid.suctionTerm;
    return (theta) => liquid.saturatedConductivity_s * Math.pow(1 + Math.pow(scale_perPa * suctionAt(theta), n), -m);
  }
  const given = liquid.conductivity_s;
  if ("suction_Pa" in given) {
    const ordered = [...given.suction_Pa].sort((a, b) => b[0] - a[0]);
    const curve = monotoneCurve(
      ordered.map(([s]) => potentialAtSuction(s, referenceTemperature_K, rhoR)),
      ordered.map(([, K]) => Math.log(Math.max(K, 1e-40))),
    );
    return (theta) => Math.exp(curve.at(theta));
  }
  const curve = polyline(
    given.moistureContent.map(([w]) => w),
    given.moistureContent.map(([, K]) => Math.log(Math.max(K, 1e-40))),
  );
  return (theta) => (humidityAt(theta) > 0 ? Math.exp(curve.at(sorption.boundWaterAt(theta))) : 0);
}
