/** Physics of the wall: what the march and the steady methods stand on. */
export { labLoads } from "./lab-loads.ts";
export { saturationOverWater } from "./physics-settings.ts";
