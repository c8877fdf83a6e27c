import { placeName, places, type PlaceNormals } from "./place-normals.ts";

const degree = Math.PI / 180;
/** Mean radius of the Earth [km]. Source: IUGG. */
const earthRadius_km = 6371.0088;

const plain = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase();

/**
 * Places that match every word, in any order: name, state, country, id, station or climate zone; those whose name starts with
 * the first word come first. No words: all places.
 */
export function findPlaces(words: string): readonly PlaceNormals[] {
  const wanted = plain(words)
    .split(/[\s,]+/)
    .filter((word) => word !== "");
  const first = wanted[0];
  if (first === undefined) return places;
  const haystack = (place: PlaceNormals): string =>
    plain(`${placeName(place)} ${place.region} ${place.country} ${place.id} ${place.station} ${place.climateZone}`);
  const startsWith = (place: PlaceNormals): number => (plain(place.name).startsWith(first) ? 0 : 1);
  return places
    .filter((place) => wanted.every((word) => haystack(place).includes(word)))
    .sort((a, b) => startsWith(a) - startsWith(b) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

export const placeById = (id: string): PlaceNormals | undefined => places.find((place) => place.id === id);

/** Great-circle distance [km]. Source: haversine formula. */
export function distance_km(
  latitudeA_deg: number,
  longitudeA_deg: number,
  latitudeB_deg: number,
  longitudeB_deg: number,
): number {
  const dLat = (latitudeB_deg - latitudeA_deg) * degree;
  const dLon = (longitudeB_deg - longitudeA_deg) * degree;
  const h =
    Math.sin(dLat / 2) ** 2 +
    Math.cos(latitudeA_deg * degree) * Math.cos(latitudeB_deg * degree) * Math.sin(dLon / 2) ** 2;
  return 2 * earthRadius_km * Math.asin(Math.min(1, Math.sqrt(h)));
}

/** The embedded place nearest to the coordinates, and how far it is. */
export function nearestPlace(
  latitude_deg: number,
  longitude_deg: number,
): { readonly place: PlaceNormals; readonly distance_km: number } {
  let nearest = places[0]!;
  let shortest = Infinity;
  for (const place of places) {
    const distance = distance_km(latitude_deg, longitude_deg, place.latitude_deg, place.longitude_deg);
    if (distance < shortest) {
      shortest = distance;
      nearest = place;
    }
  }
  return { place: nearest, distance_km: shortest };
}
