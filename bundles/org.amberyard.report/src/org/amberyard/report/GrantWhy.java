package org.amberyard.report;

import java.util.List;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.WhyMass;
import org.amberyard.core.plan.BenefitWhy;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.AirRows.OfBenefit;

/** How figures of grant tables come about. */
final class GrantWhy {
    private GrantWhy() {
    }

    /** How a mass of one bus comes about. */
    @FunctionalInterface
    interface OfBus {
        Derivation of(BenefitWhy why, ReplacedBus bus, Pollutant pollutant);
    }

    /** A mass of a row in short tons: the sum of its buses. */
    static Derivation sum(OfBenefit row, String name, double kg, OfBus ofBus) {
        BenefitWhy why = new BenefitWhy(row.project().result());
        Derivation sum = row.measure().pollutant().map(p -> Derivation.sum(name, WhyMass.KG,
                row.buses().stream().map(b -> ofBus.of(why, b, p)).toList()))
                .orElseGet(() -> Derivation.of(name, kg, WhyMass.KG, "dust of brakes and tyres before less after"));
        return Derivation.of(name, kg / GrantTerms.KG_PER_SHORT_TON, "short ton", "kilograms ÷ 907.18474", sum);
    }

    /** Cost of a ton less. */
    static Derivation perTon(CostPerTon.Line line) {
        BenefitWhy why = new BenefitWhy(line.project().result());
        List<ReplacedBus> buses = line.project().buses();
        return line.pollutant().map(p -> why.perShortTon(buses, p, line.basis(), line.cost()))
                .orElseGet(() -> why.recovered(buses, line.cost()).orElseGet(() -> Derivation.of(line.measure(),
                        Double.NaN, Derivation.MONEY, "nothing is reduced")));
    }
}
