import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** SHA-256 of a text in UTF-8, lower-case hex. Source: FIPS 180-4, by the library. */
export const sha256Hex = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));
