package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SocialCosts;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.why.Derivation;

/**
 * What the emissions of a plan cost others, in money of the base date. It is no cost of the plan and stands in no ledger. The
 * social cost of greenhouse gas is discounted at the rate of its own table, since harm and rate belong together.
 */
public final class AirHarm {
    private static final double KG_PER_TONNE = 1000;

    private final StudyInput study;
    private final PlanResult plan;
    private final SocialCosts social;

    /** Harm of a plan of a study. */
    public AirHarm(StudyInput study, PlanResult plan) {
        this.study = study;
        this.plan = plan;
        this.social = study.air().social();
    }

    /** Social cost of the greenhouse gas of a year; not a number where it is not known. */
    public double social(int year) {
        double sum = 0;
        for (EmissionSource source : EmissionSource.values()) {
            sum += source.inTotal() ? social.of(plan.air().get(year).emissions().of(source), study.baseYear() + year) : 0;
        }
        return sum;
    }

    /** The same at the base date. */
    public double socialPresent(int year) {
        return social(year) * discount(year);
    }

    private double discount(int year) {
        return DiscountFactor.single(social.rate(), FlowTime.RUNNING.years(year, study.money().midYear()));
    }

    /** Low end of the harm to health in a year. */
    public double healthLow(int year) {
        return study.air().health().low(plan.air().get(year).emissions());
    }

    /** High end of the harm to health in a year. */
    public double healthHigh(int year) {
        return study.air().health().high(plan.air().get(year).emissions());
    }

    /** How the social cost of a year comes about. */
    public Derivation why(AirWhy air, int year) {
        List<Derivation> parts = new ArrayList<>();
        for (EmissionSource source : EmissionSource.values()) {
            Masses masses = plan.air().get(year).emissions().of(source);
            if (source.inTotal() && masses.kg(Pollutant.CO2E) != 0) {
                SocialCosts.gases(masses).forEach(gas -> parts.add(cost(air.source(plan, year, source, gas), gas, year)));
            }
        }
        return Derivation.sum("social cost of greenhouse gas", Derivation.MONEY, parts);
    }

    private Derivation cost(Derivation mass, Pollutant gas, int year) {
        Pollutant column = gas == Pollutant.CO2E ? Pollutant.CO2 : gas;
        double perTonne = social.perTonne(column, study.baseYear() + year).orElse(Double.NaN);
        Derivation[] points = social.column(column).stream().map(p -> Derivation.input(
                column.label() + " emitted in " + p.calendarYear(), p.perTonne(), "money/t", p.origin().input()))
                .toArray(Derivation[]::new);
        return Derivation.of("social cost of " + mass.name(), mass.value() / KG_PER_TONNE * perTonne, Derivation.MONEY,
                "mass in kilograms ÷ 1,000 × cost of a tonne", mass, Derivation.of("cost of a tonne", perTonne, "money/t",
                        "on the straight line between the years of the table, in money of the base date", points));
    }
}
