/** The door of the materials room. */
export * from "./material.ts";
export { catalogue, materialById } from "./catalogue.ts";
export { airPermeability23_kgmsPa } from "./material-of-row.ts";
export {
  passportProperties,
  type CatalogueEntry,
  type CatalogueMaterial,
  type Passport,
  type PassportProperty,
} from "./passport.ts";
export type { Confidence } from "./catalogue-row.ts";
export { materialIssues, type MaterialNeeds } from "./material-issues.ts";
export { findMaterials } from "./find-materials.ts";
export { alternativesOf, vapourAlternatives, type VapourAlternative } from "./vapour-pairs.ts";
