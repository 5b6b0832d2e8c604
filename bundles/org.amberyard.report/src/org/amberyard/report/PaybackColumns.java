package org.amberyard.report;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.amberyard.core.money.Payback;
import org.amberyard.core.plan.Comparison;
import org.amberyard.core.units.Unit;

/** Columns on whether and when a plan pays back against the baseline. */
final class PaybackColumns {
    private static final String YEARS = "Time after which it has paid back; no figure when it never does.";

    private PaybackColumns() {
    }

    /** The table with the columns; rows without a comparison have no figures in them. */
    static <R> TableDefinition<R> added(TableDefinition<R> table, Function<R, Optional<Comparison>> comparison) {
        return table.text("simple_payback", "Simple payback", whether("undiscounted"),
                r -> comparison.apply(r).map(c -> words(c.simple())).orElse(null))
                .optional("simple_payback_years", "Simple payback time", Unit.YEAR, YEARS,
                        r -> comparison.apply(r).map(c -> years(c.simple())).orElse(OptionalDouble.empty()))
                .text("discounted_payback", "Discounted payback", whether("discounted"),
                        r -> comparison.apply(r).map(c -> words(c.discounted())).orElse(null))
                .optional("discounted_payback_years", "Discounted payback time", Unit.YEAR, YEARS,
                        r -> comparison.apply(r).map(c -> years(c.discounted())).orElse(OptionalDouble.empty()));
    }

    private static String whether(String kind) {
        return "Whether the " + kind + " saving pays back: at once, after some time, never, or no difference in any year.";
    }

    private static String words(Payback payback) {
        return switch (payback.outcome()) {
            case NO_DIFFERENCE -> "no difference";
            case AT_ONCE -> "at once";
            case AFTER -> "after some time";
            case NEVER -> "never";
        };
    }

    private static OptionalDouble years(Payback payback) {
        return Double.isNaN(payback.years()) ? OptionalDouble.empty() : OptionalDouble.of(payback.years());
    }
}
