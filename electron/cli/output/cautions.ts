/** Shown with every result that people read. */
export const cautions = [
  "An estimate in one dimension, of the weather and figures named above; a real wall has corners, gaps and workmanship.",
  "Mould, rot, corrosion and frost hurt people and houses. Local codes and a licensed designer decide.",
];
