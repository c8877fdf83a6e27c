import { describe, expect, it } from "vitest";
import { capillaryUptake } from "../../../solver/studies/published-checks/closed-forms/capillary-uptake.ts";
import {
  conductionWithAirFlow,
  filmRoot,
  halfSpaceFilm,
  halfSpaceStep,
  slabFilm,
  slabTwoFaces,
} from "../../../solver/studies/published-checks/closed-forms/conduction.ts";
import { erf, erfc, scaledErfc } from "../../../solver/studies/published-checks/closed-forms/error-function.ts";
import { slabUptakeShare } from "../../../solver/studies/published-checks/closed-forms/sorption.ts";
import { periodicResponse } from "../../../solver/studies/published-checks/closed-forms/periodic.ts";
import { fixture, numbers } from "./fixture.ts";

const folder = (name: string): string => new URL(`../${name}/`, import.meta.url).href;
const a = 1.5e-7;
const conductor = { conductivity_WmK: 0.12, volumetricHeatCapacity_Jm3K: 8e5 };

describe("error function", () => {
  // Abramowitz and Stegun (1964), table 7.1 and 7.3 (MEMORY).
  it("meets the handbook's table", () => {
    expect(erf(0.5)).toBeCloseTo(0.5204998778, 10);
    expect(erf(1)).toBeCloseTo(0.8427007929, 10);
    expect(erf(2)).toBeCloseTo(0.995322265, 9);
    expect(erf(-1)).toBeCloseTo(-0.8427007929, 10);
    expect(erfc(3) / 2.20904969985854e-5).toBeCloseTo(1, 10);
  });
  it("does not jump where series and continued fraction meet", () => {
    expect(erfc(2 - 1e-12) / erfc(2)).toBeCloseTo(1, 9);
    expect(scaledErfc(2 - 1e-12) / scaledErfc(2)).toBeCloseTo(1, 9);
  });
});

describe("closed forms give the tabled figures", () => {
  it("half-space step", () => {
    for (const row of numbers(folder("half-space-step"), "points.csv"))
      expect(halfSpaceStep(row.x_m!, row.time_h! * 3600, a, 20, 0)).toBeCloseTo(row.T_C!, 5);
  });
  it("slab between two temperatures", () => {
    for (const row of numbers(folder("slab-two-temperatures"), "points.csv"))
      expect(slabTwoFaces(row.x_m!, row.time_h! * 3600, a, 0.2, 20, 0, 10)).toBeCloseTo(row.T_C!, 5);
  });
  it("slab behind a film", () => {
    for (const row of numbers(folder("slab-film"), "points.csv"))
      expect(slabFilm(row.x_from_adiabatic_face_m!, row.time_h! * 3600, conductor, 0.1, 10, 20, 0)).toBeCloseTo(
        row.T_C!,
        5,
      );
  });
  it("roots of b tan b = Bi are roots", () => {
    for (const n of [1, 2, 3, 10]) expect(filmRoot(n, 8.3) * Math.tan(filmRoot(n, 8.3))).toBeCloseTo(8.3, 8);
  });
  it("half-space behind a film", () => {
    for (const row of numbers(folder("half-space-film"), "points.csv"))
      expect(halfSpaceFilm(row.x_from_surface_m!, row.time_h! * 3600, conductor, 10, 20, 0)).toBeCloseTo(row.T_C!, 5);
  });
  it("air flow through a conducting layer", () => {
    for (const row of numbers(folder("conduction-with-air-flow"), "points.csv"))
      expect(conductionWithAirFlow(row.x_m!, row.v_m_s!, 1206, 0.06, 0.2, 0, 20)).toBeCloseTo(row.T_C!, 5);
  });
  it("sorption of a slab", () => {
    const D = (1.2e-11 * 2339) / 60;
    for (const row of numbers(folder("sorption-slab"), "points.csv")) {
      expect(slabUptakeShare(row.time_h! * 3600, D, 0.02)).toBeCloseTo(row.uptake_fraction!, 5);
      expect(slabTwoFaces(0.01, row.time_h! * 3600, D, 0.02, 0.5, 0.8, 0.8)).toBeCloseTo(row.RH_centre!, 5);
    }
  });
  it("early sorption follows the root of time", () => {
    const [D, l, t] = [4.678e-10, 0.02, 6 * 3600];
    expect(slabUptakeShare(t, D, l)).toBeCloseTo(4 * Math.sqrt((D * t) / (Math.PI * l * l)), 4);
  });
  it("drying of the isothermal layer", () => {
    for (const row of numbers(folder("hamstad-2"), "points.csv"))
      expect(slabTwoFaces(row.x_m!, row.time_h! * 3600, 6e-10, 0.2, 84.768697, 19.535619, 30.505935)).toBeCloseTo(
        row.w_kg_m3!,
        5,
      );
  });
  it("capillary uptake", () => {
    const D = (w: number): number => 3.8 * (0.02 / 200) ** 2 * 1000 ** (w / 200 - 1);
    const { sorptivity, waterAt } = capillaryUptake(D, 2, 200);
    expect(sorptivity).toBeCloseTo(0.0200604, 6);
    for (const row of numbers(folder("capillary-uptake"), "points.csv")) {
      expect(waterAt(row.x_m! / Math.sqrt(row.time_h! * 3600))).toBeCloseTo(row.w_kg_m3!, 2);
      expect(sorptivity * Math.sqrt(row.time_h! * 3600)).toBeCloseTo(row.cumulative_uptake_kg_m2!, 4);
    }
  });
  it("periodic walls", () => {
    const frame = [
      { thickness_m: 0.0125, conductivity_WmK: 0.25, volumetricHeatCapacity_Jm3K: 900e3 },
      { thickness_m: 0.14, conductivity_WmK: 0.036, volumetricHeatCapacity_Jm3K: 30 * 850 },
      { thickness_m: 0.011, conductivity_WmK: 0.13, volumetricHeatCapacity_Jm3K: 650 * 1600 },
    ];
    const concrete = [{ thickness_m: 0.2, conductivity_WmK: 1.8, volumetricHeatCapacity_Jm3K: 2400e3 }];
    for (const row of fixture(folder("periodic-walls"), "points.csv")) {
      const period_s = row.period === "24h" ? 86400 : 365 * 86400;
      const got = periodicResponse(row.wall === "concrete200" ? concrete : frame, 0.13, 0.04, period_s);
      expect(got.U_Wm2K).toBeCloseTo(Number(row.U_W_m2K), 5);
      expect(got.transmittance_Wm2K).toBeCloseTo(Number(row.Yie_W_m2K), 5);
      expect(got.decrement).toBeCloseTo(Number(row.f), 5);
      expect(got.transmittanceShift_h).toBeCloseTo(Number(row.time_shift_f_h), 4);
      expect(got.insideAdmittance_Wm2K).toBeCloseTo(Number(row.Yii), 5);
      expect(got.insideShift_h).toBeCloseTo(Number(row.time_shift_ii_h), 4);
      expect(got.outsideAdmittance_Wm2K).toBeCloseTo(Number(row.Yee), 5);
      expect(got.outsideShift_h).toBeCloseTo(Number(row.time_shift_ee_h), 4);
      expect(got.insideCapacity_Jm2K / 1000).toBeCloseTo(Number(row.kappa_i_kJ_m2K), 3);
      expect(got.outsideCapacity_Jm2K / 1000).toBeCloseTo(Number(row.kappa_e_kJ_m2K), 3);
    }
  });
});
