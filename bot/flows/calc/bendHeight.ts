/** Where the hosel bends above the leading edge when nobody says: 45 to 65 mm on most irons, common practice, no source. */
export const usualBendHeightMm = 55;
