// Finds a Chromium: the browser tests drive it, the command line prints PDF with it.
import { execFileSync } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome"];
const places = ["/usr/bin", "/usr/local/bin", "/snap/bin", "/opt/google/chrome"];
const otherPlaces = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  ...["ProgramFiles", "ProgramFiles(x86)", "LOCALAPPDATA"].flatMap((name) => {
    const folder = process.env[name];
    return folder === undefined
      ? []
      : [
          join(folder, "Chromium", "Application", "chrome.exe"),
          join(folder, "Google", "Chrome", "Application", "chrome.exe"),
        ];
  }),
];

/** The variable that names a Chromium outright. */
export const chromiumVariable = "WALLYEAR_CHROMIUM";

export const howToGetOne = [
  `Install Chromium (Debian, Ubuntu: "sudo apt-get install chromium"; Fedora: "sudo dnf install chromium"; macOS and`,
  `Windows: any Chromium or Chrome), or set ${chromiumVariable} to the full path of one, and run the tests again.`,
].join("\n");

function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The path of a Chromium, or null. A variable that names none is a fault of its own, said by throwing. */
export function findChromium() {
  const named = process.env[chromiumVariable];
  if (named !== undefined && named !== "") {
    if (!runs(named))
      throw new Error(`${chromiumVariable} is "${named}", which is no program. Correct it or leave it out.`);
    return named;
  }
  const folders = [...places, ...(process.env.PATH ?? "").split(delimiter)];
  const candidates = [...names.flatMap((name) => folders.map((folder) => join(folder, name))), ...otherPlaces];
  return candidates.find((path) => existsSync(path) && runs(path)) ?? null;
}

/** Installs Debian's Chromium where this account may: as root, on a system with apt. Null where it may not or it failed. */
export function installChromium() {
  if (process.platform !== "linux" || process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return null;
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const apt = (...words) =>
    execFileSync("apt-get", words, { stdio: ["ignore", "ignore", "inherit"], env, timeout: 300_000 });
  try {
    apt("update");
    apt("install", "-y", "--no-install-recommends", "chromium", "fonts-dejavu-core");
  } catch {
    return null;
  }
  return findChromium();
}
