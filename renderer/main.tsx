import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "@fontsource-variable/encode-sans/wdth.css";
import "./style/tokens.css";
import "./style/type.css";
import "./style/parts.css";
import { App } from "./app.tsx";
import { fetchSheets } from "./shell/sheets.ts";
import { startSession } from "./state/session.ts";

startSession();

createRoot(document.getElementById("root")!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
fetchSheets();
