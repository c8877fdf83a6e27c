/** What the program is, and what it is not. */
export function About() {
  return (
    <div className="about">
      <p>
        Wallyear puts a wall through a year of weather before anybody builds it: heat and moisture through every layer,
        hour by hour, for each way the wall may be built.
      </p>
      <p>
        A one-dimensional simulation of a weather year is an estimate. Mould, rot, corrosion and frost hurt people and
        houses: local codes and a licensed designer decide, not this program.
      </p>
      <p>It works without a network, keeps projects as plain files, and is free under the MIT licence.</p>
    </div>
  );
}
