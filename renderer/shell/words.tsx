interface Word {
  readonly word: string;
  readonly meaning: string;
  readonly source: string;
}

const words: readonly Word[] = [
  {
    word: "ACH50",
    meaning: "Air changes in an hour with the house held at 50 Pa by a blower door.",
    source: "ASTM E779; ISO 9972",
  },
  {
    word: "Control layers",
    meaning:
      "The layers that keep out or hold back water, air, vapour and heat. Each must run unbroken round the conditioned space.",
    source: "Term of the trade",
  },
  {
    word: "Dew point",
    meaning: "The temperature at which air of a given vapour pressure is saturated. A colder face collects water.",
    source: "ASHRAE Handbook Fundamentals, psychrometrics",
  },
  {
    word: "Driving rain",
    meaning: "Rain that the wind carries onto an upright face.",
    source: "ISO 15927-3; ANSI/ASHRAE 160",
  },
  {
    word: "Moisture content",
    meaning: "Water in wood, in per cent of its oven-dry mass.",
    source: "ASTM D4442",
  },
  {
    word: "Mould index",
    meaning: "A number from 0 to 6 that rises with warm damp time: 1 is seen under a microscope, 3 with the eye.",
    source: "ANSI/ASHRAE 160",
  },
  {
    word: "Path",
    meaning: "A straight line through the wall from outside to inside: stud bay, stud, rim joist, ledger.",
    source: "Parallel-path method, ASHRAE Handbook Fundamentals",
  },
  {
    word: "Perm",
    meaning: "Permeance: grains of vapour in an hour through a square foot under an inch of mercury.",
    source: "ASTM E96",
  },
  {
    word: "R and U",
    meaning: "R resists heat, in h·ft²·°F/Btu; U is its inverse for a whole wall with its films.",
    source: "ASHRAE Handbook Fundamentals; ISO 6946",
  },
  {
    word: "Relative humidity",
    meaning: "Vapour pressure over the saturation pressure at the same temperature.",
    source: "ASHRAE Handbook Fundamentals, psychrometrics",
  },
  {
    word: "sd",
    meaning: "The thickness of still air that resists vapour as much as a layer does.",
    source: "ISO 12572",
  },
  {
    word: "Sorption",
    meaning: "How much water a material holds at each humidity of the air about it.",
    source: "ISO 12571",
  },
  {
    word: "Vapour retarder class",
    meaning: "Class I up to 0.1 perm, class II up to 1 perm, class III up to 10 perm, by the dry cup.",
    source: "International Residential Code, R202 and R702.7",
  },
  {
    word: "Water absorption coefficient",
    meaning: "How fast a face draws in liquid water, by the root of time.",
    source: "ISO 15148",
  },
];

/** Words of the trade that stand on the sheets, with where they are defined. */
export function Words() {
  return (
    <table className="table">
      <thead>
        <tr>
          <th>Word</th>
          <th>Meaning</th>
          <th>Defined in</th>
        </tr>
      </thead>
      <tbody>
        {words.map(({ word, meaning, source }) => (
          <tr key={word}>
            <th scope="row" className="strong">
              {word}
            </th>
            <td>{meaning}</td>
            <td className="secondary">{source}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
