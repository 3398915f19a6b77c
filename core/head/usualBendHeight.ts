/** Where the hosel of an iron bends above the leading edge in mm, when nobody says: 45 to 65 mm, common practice, no source. */
export const USUAL_BEND_HEIGHT_MM = 55;
