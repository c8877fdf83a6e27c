export * from "./material.ts";
