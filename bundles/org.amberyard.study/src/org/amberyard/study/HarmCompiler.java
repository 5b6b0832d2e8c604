package org.amberyard.study;

import org.amberyard.core.air.HealthCosts;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SocialCosts;
import org.amberyard.model.air.AirPackage;
import org.amberyard.model.air.Emitter;
import org.amberyard.model.air.HealthCost;
import org.amberyard.model.air.SocialCost;
import org.amberyard.model.study.EmissionFactors;

/** Compiles what emissions cost others. */
final class HarmCompiler {
    private HarmCompiler() {
    }

    static SocialCosts social(EmissionFactors factors) {
        return new SocialCosts(factors.getSocialCosts().stream().map(HarmCompiler::point).toList(),
                factors.getSocialCostRate(), factors.getSocialCostPriceFactor());
    }

    private static SocialCosts.Point point(SocialCost row) {
        return new SocialCosts.Point(gas(row), row.getYear(), row.getRate(), row.getCostPerT(),
                new FactorReader(row, "").origin(AirPackage.Literals.SOCIAL_COST__COST_PER_T));
    }

    private static Pollutant gas(SocialCost row) {
        return switch (row.getGas()) {
            case CO2 -> Pollutant.CO2;
            case CH4 -> Pollutant.CH4;
            case N2O -> Pollutant.N2O;
        };
    }

    static HealthCosts health(EmissionFactors factors) {
        return new HealthCosts(factors.getHealthCosts().stream().map(HarmCompiler::cost).toList());
    }

    private static HealthCosts.Cost cost(HealthCost row) {
        return new HealthCosts.Cost(pollutant(row), row.getEmitter() == Emitter.POWER_PLANTS, row.getLowPerT(), row.getHighPerT(),
                new FactorReader(row, row.getRegion()).origin(AirPackage.Literals.HEALTH_COST__HIGH_PER_T));
    }

    private static Pollutant pollutant(HealthCost row) {
        return switch (row.getPollutant()) {
            case NOX -> Pollutant.NOX;
            case PM25 -> Pollutant.PM25;
            case HC -> Pollutant.HC;
            case CO -> Pollutant.CO;
            case SO2 -> Pollutant.SO2;
        };
    }
}
