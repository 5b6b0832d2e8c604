package org.amberyard.core.funding;

/**
 * Share of the cost that a programme wants from elsewhere, measured on each line by the cost that it covers.
 *
 * @param share share of the cost; zero for none
 * @param from money that counts
 */
public record Match(double share, From from) {

    /** No match is wanted. */
    public static final Match NONE = new Match(0, From.OWN);

    /** Money that counts as match. */
    public enum From {
        /** The operator's own, of no programme. */
        OWN("own money"),
        /** All but federal: federal money matches no federal money. */
        NON_FEDERAL("non-federal money");

        private final String label;

        From(String label) {
            this.label = label;
        }

        /** Name for messages. */
        public String label() {
            return label;
        }
    }
}
