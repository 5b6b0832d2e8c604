package org.amberyard.report;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.units.Unit;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** What present costs are divided by: distance and days of riders, each year discounted as its running costs are. */
final class DiscountedUse {
    private final StudyInput study;

    DiscountedUse(StudyInput study) {
        this.study = study;
    }

    /**
     * Distance.
     *
     * @param ofYear that of each year of the study
     */
    Derivation distance(IntFunction<Derivation> ofYear) {
        return Derivation.sum("discounted distance", Unit.KILOMETRE.token(), years(year -> Derivation.product("discounted distance in "
                + calendar(year), Unit.KILOMETRE.token(), ofYear.apply(year), factor(year))));
    }

    /** Days of riders; routes carry the same riders in all years. */
    Derivation riderDays() {
        Derivation aYear = Derivation.sum("days of riders in a year", Unit.DAY.token(),
                study.duty().routes().stream().map(DiscountedUse::riderDays).toList());
        Derivation years = Derivation.sum("discounted years", Unit.YEAR.token(), years(this::factor));
        return Derivation.product("discounted days of riders", Unit.DAY.token(), aYear, years);
    }

    private static Derivation riderDays(RouteInput route) {
        Derivation riders = Derivation.input("riders of route " + route.name(), route.riders().orElseThrow(), Unit.COUNT.token(),
                new InputRef("Route", route.name(), "riders"));
        return Derivation.product("days of riders of route " + route.name(), Unit.DAY.token(), riders, Derivation.of("service days of route "
                + route.name(), route.serviceDays(), Unit.DAY.token(), "days in the year on which it is driven"));
    }

    private List<Derivation> years(IntFunction<Derivation> ofYear) {
        return IntStream.range(0, study.years()).mapToObj(ofYear).toList();
    }

    private Derivation factor(int year) {
        return DiscountFactor.whySingle(study.money().rates().real(), study.money().time(CostCategory.UPKEEP, year));
    }

    private String calendar(int year) {
        return study.money().fiscal().name(study.baseYear() + year);
    }
}
