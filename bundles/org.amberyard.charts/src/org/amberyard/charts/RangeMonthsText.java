package org.amberyard.charts;

import java.util.Comparator;

/** The range by month in words. */
final class RangeMonthsText {
    private final RangeMonths months;

    RangeMonthsText(RangeMonths months) {
        this.months = months;
    }

    String sentences() {
        StringBuilder text = new StringBuilder("Distance left above the reserve on the worst operated day of each month. ");
        text.append(months.caption().replace("\n", ". ")).append(". ").append(counts()).append(worst());
        months.rows().forEach(row -> text.append(' ').append(sentence(row)));
        return text.toString();
    }

    private String counts() {
        return "Of " + months.rows().size() + " routes, " + count(MonthStanding.FOR_LIFE)
                + " pass in every month they run to the end of the pack's service, " + count(MonthStanding.NEW_ONLY) + " only while the pack is new, "
                + count(MonthStanding.FAILS) + " fail with a new pack and "
                + months.rows().stream().filter(r -> r.worst().isEmpty()).count() + " could not be judged.";
    }

    private long count(MonthStanding standing) {
        return months.rows().stream().filter(r -> r.worst().filter(c -> c.standing() == standing).isPresent()).count();
    }

    private String worst() {
        return months.rows().stream().filter(r -> r.worst().isPresent())
                .min(Comparator.comparing(r -> r.worst().orElseThrow(), RangeMonths.Cell.WORST_FIRST))
                .map(r -> " Worst is " + months.route(r) + " in " + months.inMonth(r.worst().orElseThrow()) + ".").orElse("");
    }

    private String sentence(RangeMonths.Row row) {
        return row.label() + ": " + row.worst().map(c -> "worst in " + months.inMonth(c)).orElse(RangeWords.NOT_JUDGED) + ".";
    }
}
