package org.amberyard.core.funding;

/**
 * Money that a programme wants from elsewhere, measured on each line.
 *
 * @param share share of the base; zero for none
 * @param from money that counts
 * @param base what it is a share of, as the notice defines it
 */
public record Match(double share, From from, Base base) {

    /** No match is wanted. */
    public static final Match NONE = new Match(0, From.OWN, Base.COVERED);

    /** Money that counts as match. */
    public enum From {
        /** The operator's own, of no programme. */
        OWN("own money"),
        /** All but federal and what the programme itself pays: federal money matches no federal money. */
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

    /** What a match is a share of. */
    public enum Base {
        /** The cost that the programme covers. */
        COVERED("the cost that it covers"),
        /** The whole cost of the line. */
        WHOLE("the whole cost"),
        /** What the programme pays. */
        AWARD("the award");

        private final String label;

        Base(String label) {
            this.label = label;
        }

        /** Name for messages, behind “share of”. */
        public String label() {
            return label;
        }
    }
}
