package org.amberyard.model.validation;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.prices.CostIndex;
import org.amberyard.model.prices.FluidPrice;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.IndexSubject;
import org.amberyard.model.prices.PackPrice;
import org.amberyard.model.prices.PricePath;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.HeatSource;
import org.amberyard.model.vehicles.VehicleType;

/** Each price that the vehicle types need is there, and none twice. */
final class PriceCoverRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        checkDuplicates(study, findings);
        checkFuels(study, findings);
        checkOne(study, FluidPrice.class, "exhaust fluid", findings);
        checkOne(study, PackPrice.class, "a battery pack", findings);
        checkIndices(study, findings);
    }

    private static void checkDuplicates(Study study, Findings findings) {
        Set<String> seen = new HashSet<>();
        for (PricePath price : study.getPrices()) {
            if (!seen.add(ElementNames.withKind(price))) {
                findings.error(price, null, "it appears more than once; keep one.");
            }
        }
    }

    private static void checkFuels(Study study, Findings findings) {
        Set<Fuel> priced = EnumSet.noneOf(Fuel.class);
        study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                .forEach(p -> priced.add(p.getFuel()));
        Set<Fuel> told = EnumSet.noneOf(Fuel.class);
        for (VehicleType type : study.getVehicleTypes()) {
            Fuel fuel = fuel(type);
            if (fuel != null && !priced.contains(fuel) && told.add(fuel)) {
                findings.error(study, Literals.STUDY__PRICES, "the price of " + fuel.getLiteral() + " is missing, which "
                        + ElementNames.of(type) + " burns; add a fuel price.");
            }
        }
    }

    private static Fuel fuel(VehicleType type) {
        if (type instanceof CombustionType engine) {
            return engine.getFuel();
        }
        boolean fired = type instanceof ElectricType electric && electric.getHeatSource() == HeatSource.FUEL_FIRED;
        return fired ? Fuel.DIESEL : null;
    }

    private static void checkOne(Study study, Class<? extends PricePath> kind, String subject, Findings findings) {
        if (study.getPrices().stream().noneMatch(kind::isInstance)) {
            findings.error(study, Literals.STUDY__PRICES, "the price of " + subject + " is missing; add it.");
        }
    }

    private static void checkIndices(Study study, Findings findings) {
        Set<IndexSubject> missing = EnumSet.allOf(IndexSubject.class);
        study.getPrices().stream().filter(CostIndex.class::isInstance)
                .forEach(p -> missing.remove(((CostIndex) p).getSubject()));
        missing.forEach(subject -> findings.info(study, Literals.STUDY__PRICES, "there is no cost index for "
                + subject.getLiteral() + ", so it is held constant above general inflation."));
    }
}
