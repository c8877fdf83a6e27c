import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
  root: import.meta.dirname,
  cacheDir: "../../../../node_modules/.vite-charts",
  plugins: [react()],
  define: { global: "globalThis" },
  server: { port: 5311, strictPort: true, fs: { allow: ["../../../.."] }, hmr: false },
  optimizeDeps: { include: ["plotly.js/lib/core", "plotly.js/lib/bar", "plotly.js/lib/heatmap"] },
});
