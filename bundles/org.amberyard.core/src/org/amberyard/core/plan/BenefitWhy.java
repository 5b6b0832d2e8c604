package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.WhyMass;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** How the measures of a grant come about: what a bus reduces in a year and in the remaining life of the old one, and its cost. */
public final class BenefitWhy {
    private static final String TON = "short ton";
    private final StudyResult result;
    private final AirWhy air;

    /** Derivations of a result. */
    public BenefitWhy(StudyResult result) {
        this.result = result;
        this.air = new AirWhy(result);
    }

    /** A pollutant that exhaust pipes emit less in a year. */
    public Derivation reduced(ReplacedBus bus, Pollutant pollutant) {
        Derivation before = exhaust("before", bus.compared(), pollutant);
        Derivation after = exhaust("after", bus.now(), pollutant);
        boolean drives = bus.compared().use().km() > 0;
        String rule = drives ? "before less after" : "nothing counts for a bus that stands still";
        return Derivation.of(pollutant.label() + " reduced in a year", bus.reducedExhaust().kg(pollutant), WhyMass.KG, rule, before,
                after);
    }

    private Derivation exhaust(String name, VehicleYear record, Pollutant pollutant) {
        return Derivation.sum(name, WhyMass.KG, Stream.of(EmissionSource.values()).filter(EmissionSource::exhaust)
                .map(s -> air.bus(record, s, pollutant)).toList());
    }

    /** A pollutant that exhaust pipes emit less in the remaining life of the old bus. */
    public Derivation lifetime(ReplacedBus bus, Pollutant pollutant) {
        int base = result.input().baseYear();
        Derivation years = Derivation.of("years of remaining life", bus.remainingYears(), "year",
                "year in which the old bus would have retired less year of the change, at least 0",
                Derivation.of("would have retired", base + (double) bus.retires(), "calendar",
                        "year in which it leaves its place in the baseline, or by age, odometer or plan after the study"),
                Derivation.of("change", base + (double) bus.year(), "calendar", "year of the plan's step or rule"));
        return Derivation.product(pollutant.label() + " reduced in the remaining life", WhyMass.KG, reduced(bus, pollutant), years);
    }

    /** Money for a short ton of a pollutant less. */
    public Derivation perShortTon(List<ReplacedBus> buses, Pollutant pollutant, String ofWhat, Derivation cost) {
        List<Derivation> lives = new ArrayList<>();
        buses.forEach(b -> lives.add(lifetime(b, pollutant)));
        Derivation kg = Derivation.sum(pollutant.label() + " reduced by all buses", WhyMass.KG, lives);
        return Derivation.of(ofWhat + " per short ton of " + pollutant.label(),
                GrantTerms.perShortTon(cost.value(), kg.value()), Derivation.MONEY, "cost ÷ short tons",
                cost, tons(kg));
    }

    /** Yearly cost by capital recovery for a weighted short ton less in a year; empty where nothing is reduced. */
    public Optional<Derivation> recovered(List<ReplacedBus> buses, Derivation cost) {
        GrantTerms terms = result.input().air().grants();
        Derivation kg = Derivation.sum("weighted reduction of a year", WhyMass.KG, List.of(
                weighted(buses, Pollutant.NOX, terms.noxWeight(), "noxWeight"),
                weighted(buses, Pollutant.HC, terms.hcWeight(), "hcWeight"),
                weighted(buses, Pollutant.PM25, terms.pmWeight(), "pmWeight")));
        return terms.recovered(cost.value(), ReplacedBuses.reducedPerYear(buses))
                .map(c -> c.why("weighted pollutants", TON, cost, tons(kg)));
    }

    private Derivation weighted(List<ReplacedBus> buses, Pollutant pollutant, double weight, String field) {
        Derivation kg = Derivation.sum(pollutant.label() + " reduced in a year", WhyMass.KG,
                buses.stream().map(b -> reduced(b, pollutant)).toList());
        return Derivation.product("weighted " + pollutant.label(), WhyMass.KG, kg, Derivation.input(
                "weight of " + pollutant.label(), weight, "1", new InputRef("EmissionFactors", "", field)));
    }

    private static Derivation tons(Derivation kg) {
        return Derivation.of(kg.name() + ", in short tons", kg.value() / GrantTerms.KG_PER_SHORT_TON, TON,
                "kilograms ÷ 907.18474", kg);
    }
}
