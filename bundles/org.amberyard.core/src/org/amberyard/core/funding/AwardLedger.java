package org.amberyard.core.funding;

import java.util.List;
import java.util.stream.Stream;

/**
 * What programmes pay for the lines of a plan, money of the year of each purchase.
 *
 * @param lines the lines in the order in which they were gone through
 */
public record AwardLedger(List<FundedLine> lines) {

    public AwardLedger {
        lines = List.copyOf(lines);
    }

    /** What a programme pays in all. */
    public double total(int programme) {
        return awards(lines.stream(), programme);
    }

    /** What a programme pays for the purchases of a year. */
    public double total(int programme, int year) {
        return awards(lines.stream().filter(l -> l.purchase().year() == year), programme);
    }

    /**
     * Buses bought before a year in which a programme takes part; each takes one of its places, whatever it pays.
     *
     * @param before year, counted from the base year
     */
    public int busesTakingPart(int programme, int before) {
        return (int) lines.stream().filter(l -> l.purchase().kind() == Purchase.Kind.BUS && l.purchase().year() < before)
                .filter(l -> l.awards().stream().anyMatch(a -> a.programme() == programme && a.takesPart())).count();
    }

    private static double awards(Stream<FundedLine> of, int programme) {
        return of.flatMap(l -> l.awards().stream()).filter(a -> a.programme() == programme).mapToDouble(Award::paid).sum();
    }
}
