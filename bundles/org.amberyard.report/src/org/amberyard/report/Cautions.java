package org.amberyard.report;

import java.util.List;

/** What everybody who reads a result should keep in mind; printed under results and shown in the window. */
public final class Cautions {
    /** The cautions, one sentence each. */
    public static final List<String> SENTENCES = List.of(
            "These are estimates for planning; prices, weather, routes and programmes will turn out otherwise.",
            "Greenhouse gas counts tailpipes, heaters and power plants with line losses; what is upstream of the "
                    + "tank stands apart, and building buses is left out.",
            "Factors for pollutants depend on engine, driving and weather; look up those of your programme before a submission.",
            "What buses are worth at the end falls in a straight line to the value entered; for electric buses there is little "
                    + "evidence yet.",
            "High-voltage parts of buses and chargers are work for trained people only.",
            "The local electrical code, the utility, the vehicle maker's instructions and a licensed electrician decide "
                    + "what may be built and connected.");

    /** What must be said where there is no room for all, as one paragraph. */
    public static String inShort() {
        return SENTENCES.get(0) + " " + SENTENCES.get(SENTENCES.size() - 1);
    }

    private Cautions() {
    }

    /** The cautions as one paragraph. */
    public static String text() {
        return String.join(" ", SENTENCES);
    }
}
