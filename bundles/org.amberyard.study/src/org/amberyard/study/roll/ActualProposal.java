package org.amberyard.study.roll;

/**
 * An assumption that what came of the last year that is over can take the place of.
 *
 * @param kind what it is about
 * @param year fiscal year that is over
 * @param assumed what the plan foresaw, with its unit
 * @param actual what came of it, with its unit
 * @param ratio actual over assumed
 */
public record ActualProposal(Kind kind, int year, String assumed, String actual, double ratio) {

    /** What a proposal is about. */
    public enum Kind {
        /** Price of fuel. */
        FUEL_PRICE("fuel-price", "Price of fuel", "the prices of fuel are multiplied, so that their paths run through it"),
        /** Fuel that engines take. */
        FUEL_USE("fuel-use", "Fuel taken", "the measured fuel economy of each engine bus is that of the model, corrected"),
        /** Energy that electric buses take. */
        ELECTRICITY_USE("electricity-use", "Electricity for charging",
                "each route that an electric bus ran gets a consumption log of the year in place of those that it has"),
        /** Parts and labour. */
        UPKEEP("upkeep", "Upkeep", "the upkeep factor of each type that was driven is multiplied");

        private final String key;
        private final String label;
        private final String effect;

        Kind(String key, String label, String effect) {
            this.key = key;
            this.label = label;
            this.effect = effect;
        }

        /** Word for the command line. */
        public String key() {
            return key;
        }

        /** Words for people. */
        public String label() {
            return label;
        }

        /** What taking it does. */
        public String effect() {
            return effect;
        }
    }

    /** In one line. */
    public String words() {
        return kind.label() + " of " + year + ": assumed " + assumed + ", actual " + actual + "; when taken, " + kind.effect();
    }
}
