/** Exact conversion factors at the edges of the program; inside everything is SI. */

/** 1 inch [m], exact by definition. */
export const metrePerInch = 0.0254;
/** 1 h ft2 degF/Btu [m2 K/W]: 0.3048^2 x (5/9) x 3600/1055.05585262. */
export const rsiPerR = 0.3048 ** 2 * (5 / 9) * (3600 / 1055.05585262);
/** 1 US perm [kg/(m2 s Pa)], grain/(h ft2 inHg) with mercury at 0 degC (ASTM E96 unit table). */
export const kgm2sPaPerPerm = 5.72135e-11;
/** degC at 0 K. */
export const zeroCelsius_K = 273.15;
/** 1 US cup [kg of water], 236.588 mL. */
export const kgPerCup = 0.236588;
/** Area of a 4 by 8 ft sheet [m2]. */
export const sheetArea_m2 = 1.2192 * 2.4384;

export const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;
export const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
