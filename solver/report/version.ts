/** Version of the program, as it stands on reports. */
export const programVersion = "0.1.0";
