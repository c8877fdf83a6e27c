import { useEffect } from "react";
import type { Project } from "../../solver/index.ts";
import { facing } from "../shell/site-words.ts";
import { sentence } from "../state/issue-words.ts";
import { useProject, useUnits, view, type Units } from "../state/index.ts";
import { rainOnFaceText, temperatureText } from "../units/index.ts";
import { useSize, useWindowHeight } from "../wall/use-size.ts";
import { FaceMonths } from "./face-months.tsx";
import { FaceBars } from "./face-bars.tsx";
import { FaceForm } from "./face-form.tsx";
import { PlaceForm } from "./place-form.tsx";
import { RoomCurve } from "./room-curve.tsx";
import { RoomForm } from "./room-form.tsx";
import type { ExposureSurvey } from "./survey.ts";
import { useSurvey } from "./use-survey.ts";
import { YearContents } from "./year-contents.tsx";
import { YearStrips } from "./year-strips.tsx";
import "./sheet.css";

/** What the year and the room do to the wall, shown before it is used. */
export default function ExposureSheet() {
  const project = useProject();
  const units = useUnits();
  const outcome = useSurvey(project);
  const [left, size] = useSize<HTMLDivElement>();
  const windowHeight = useWindowHeight();
  const survey = outcome?.kind === "survey" ? outcome.survey : null;
  const { site, indoor } = project;

  useEffect(() => view({ scale: "one year" }), []);

  return (
    <div className="exposure-sheet">
      <h1 className="lead exposure-lead">{survey ? opening(survey, project, units) : lacking(project)}</h1>
      <div className="exposure-left" ref={left}>
        {survey && size.width > 0 && (
          <section aria-label="The year" data-pane="The year" tabIndex={-1}>
            <YearStrips
              survey={survey}
              units={units}
              width={size.width}
              left={Math.min(188, size.width * 0.25)}
              faceName={facing(site?.face.azimuth_deg ?? 0)}
              stretch={Math.max(1, Math.min(2, 1 + (windowHeight - 800) / 290))}
            />
          </section>
        )}
        {outcome?.kind === "issues" && (
          <ul className="exposure-issues">
            {outcome.issues.map((issue, index) => (
              <li key={index} className="remedy">
                {sentence(issue)}
              </li>
            ))}
          </ul>
        )}
        {survey && (
          <div className="exposure-below">
            <div className="exposure-faces">
              <FaceBars faces={survey.faces} azimuth_deg={site?.face.azimuth_deg ?? 0} units={units} />
              <FaceMonths
                faces={survey.faces}
                units={units}
                width={Math.max(240, size.width < 700 ? size.width : (size.width - 24) / 2)}
              />
            </div>
            <YearContents survey={survey} units={units} />
          </div>
        )}
      </div>
      <div className="exposure-right" data-pane="Place, face and room" tabIndex={-1}>
        {site && <PlaceForm site={site} units={units} />}
        {site && <FaceForm face={site.face} units={units} />}
        {indoor && <RoomForm indoor={indoor} ach50={project.air?.ach50 ?? null} units={units} />}
        {indoor && survey && <RoomCurve survey={survey} units={units} />}
      </div>
    </div>
  );
}

const lacking = (project: Project): string =>
  project.lab ? "This project has laboratory faces; there is no weather to show." : "Reading the year.";

/** The wettest face, and what the chosen one gets. */
function opening(survey: ExposureSurvey, project: Project, units: Units): string {
  const wettest = survey.faces.find((face) => face.azimuth_deg % 90 === 0);
  const coldest = Math.min(...survey.mean_C);
  const azimuth_deg = project.site?.face.azimuth_deg ?? 0;
  const frame = `The coldest day is ${temperatureText(coldest, units)}.`;
  if (!wettest || wettest.rain_kgm2 <= 0) return `No rain is driven onto any face in this year. ${frame}`;
  const driven = survey.drivingRain_kgm2.reduce((sum, value) => sum + value, 0);
  const own = `${facing(azimuth_deg)} face`;
  return wettest.azimuth_deg === azimuth_deg
    ? `The ${own} is the wettest of the four, with ${rainOnFaceText(driven, units)} of driven rain in the year. ${frame}`
    : `The ${facing(wettest.azimuth_deg)} face is the wettest, with ${rainOnFaceText(wettest.rain_kgm2, units)} of driven rain; the ${own} takes ${rainOnFaceText(driven, units)}. ${frame}`;
}
