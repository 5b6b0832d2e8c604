package org.amberyard.core.upkeep;

import java.util.Map;

/**
 * Labour that a year asks of the shop beside what the shop can give.
 *
 * @param hours labour of tasks and failures in the year, without what drivers do themselves, h
 * @param capacityHours labour that the shop can give to buses in a year, h; zero where that is not known
 * @param monthsOver months that ask for more than a twelfth of it
 */
public record ShopLoad(double hours, double capacityHours, int monthsOver) {
    /** Below this part of its capacity a shop has people with nothing to do; assumed, no source. */
    private static final double IDLE_BELOW = 0.6;

    /** What the load means, in words. */
    public enum Verdict {
        UNKNOWN("capacity of the shop not entered"), IDLE("partly idle"), WITHIN("neither idle nor overloaded"),
        OVERLOADED("overloaded");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /** Words for tables and captions. */
        public String word() {
            return word;
        }
    }

    /** Load of a year's calendar. */
    public static ShopLoad of(ShopCalendar year, double capacityHours) {
        int over = capacityHours > 0 ? (int) year.labourHoursByMonth().stream()
                .filter(m -> shopHours(m) > capacityHours / WearYear.MONTHS).count() : 0;
        return new ShopLoad(shopHours(year.labourHours()), capacityHours, over);
    }

    private static double shopHours(Map<Skill, Double> hours) {
        return hours.entrySet().stream().filter(e -> e.getKey() != Skill.DRIVER).mapToDouble(Map.Entry::getValue).sum();
    }

    /** Part of its capacity that is asked of the shop; zero where that is not known. */
    public double share() {
        return capacityHours > 0 ? hours / capacityHours : 0;
    }

    /** What the load means. */
    public Verdict verdict() {
        if (!(capacityHours > 0)) {
            return Verdict.UNKNOWN;
        }
        return share() > 1 ? Verdict.OVERLOADED : share() < IDLE_BELOW ? Verdict.IDLE : Verdict.WITHIN;
    }
}
