package org.amberyard.core.funding;

/**
 * What a programme asks for ports: an amount for each and a share of their cost, together.
 *
 * @param amountPerPort fixed amount for each port, money of the year of purchase
 * @param share share of the cost that it covers
 * @param capPerPort most that is paid for each port; infinite for none
 * @param covers what of their cost it covers
 */
public record PortAward(double amountPerPort, double share, double capPerPort, Cover covers) {

    /** Pays nothing for ports. */
    public static final PortAward NONE = new PortAward(0, 0, Double.POSITIVE_INFINITY, Cover.ALL);

    /** What of the cost of ports a programme covers. */
    public enum Cover {
        ALL, HARDWARE, INSTALLATION;

        /** True when a part of the cost is covered; hardware comes first, installation second. */
        boolean covers(int part) {
            return this == ALL || ordinal() == part + 1;
        }
    }
}
