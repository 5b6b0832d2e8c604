package org.amberyard.core.air;

/**
 * Warming over 100 years of a mass of gas over that of the same mass of carbon dioxide.
 *
 * @param set name of the set
 * @param ch4 methane, its origin not told apart
 * @param n2o nitrous oxide
 * @param citation where the set stands
 */
public record WarmingPotentials(String set, double ch4, double n2o, String citation) {

    /** IPCC, Fourth Assessment Report, Working Group I, 2007; read as cited by US EPA, Emission Factors Hub, 1 April 2022. */
    public static final WarmingPotentials AR4 = new WarmingPotentials("AR4", 25, 298,
            "IPCC, Fourth Assessment Report, Working Group I, 2007");
    /** IPCC, Fifth Assessment Report, Working Group I, 2013, table 8.A.1, without carbon feedback (read in transcriptions). */
    public static final WarmingPotentials AR5 = new WarmingPotentials("AR5", 28, 265,
            "IPCC, Fifth Assessment Report, Working Group I, 2013, table 8.A.1");
    /** IPCC, Sixth Assessment Report, Working Group I, 2021, table 7.SM.7 (read in transcriptions). */
    public static final WarmingPotentials AR6 = new WarmingPotentials("AR6", 27.9, 273,
            "IPCC, Sixth Assessment Report, Working Group I, 2021, table 7.SM.7");

    /** Values of the user's own. */
    public static WarmingPotentials own(double ch4, double n2o) {
        return new WarmingPotentials("own values", ch4, n2o, "values of the study");
    }
}
