package org.amberyard.core.funding;

import java.util.List;

/**
 * What the match of a programme comes to on a line for which it pays.
 *
 * @param base what the match is a share of, money of the year of purchase
 * @param counted money on the line that counts as match
 */
public record LineMatch(double base, double counted) {

    /**
     * The match of a programme on a line.
     *
     * @param programmes programmes of the study, at their places
     * @param place place of the programme
     */
    public static LineMatch of(List<Programme> programmes, FundedLine line, int place) {
        LineStack stack = new LineStack(line.purchase());
        line.awards().forEach(a -> stack.take(programmes.get(a.programme()), a.paid()));
        Programme holder = programmes.get(place);
        return new LineMatch(stack.matchBase(holder), stack.counted(holder));
    }
}
