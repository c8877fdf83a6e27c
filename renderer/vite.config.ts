import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
  root: import.meta.dirname,
  base: "./",
  plugins: [react()],
  // plotly's dependencies name the global object the way Node does.
  define: { global: "globalThis" },
  worker: { format: "es" },
  build: {
    outDir: "../dist/renderer",
    emptyOutDir: true,
    target: "es2022",
    // The content policy allows no data: fonts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1500,
  },
  preview: { port: 5301, strictPort: true },
});
