package org.amberyard.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.plan.BatteryOffer;
import org.amberyard.core.plan.ChargingRules;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.core.yard.SwapTimes;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.PortKind;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.depot.ServiceUpgrade;
import org.amberyard.model.depot.SiteWork;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.study.Settings;

/** Compiles the yard's electric side. */
final class DepotCompiler {
    private final Settings settings;

    DepotCompiler(Settings settings) {
        this.settings = settings;
    }

    DepotInput compile(Depot depot) {
        ServiceInput service = new ServiceInput(depot.getServiceVoltageV(), depot.getMainBreakerA(),
                depot.getTransformerKva(), depot.getPowerFactor(), depot.getBuildingPeakKw());
        MeteringCompiler metering = new MeteringCompiler(settings.getBaseYear());
        return new DepotInput(depot.getPortTypes().stream().map(DepotCompiler::port).toList(),
                works(depot).stream().map(DepotCompiler::work).toList(), service, window(depot),
                metering.compile(depot.getTariff()), comparable(depot).stream().map(metering::compile).toList(), charging(depot),
                BillCompiler.compile(depot));
    }

    /** Tariffs to compare with that can be billed; findings name the others. */
    private static List<Tariff> comparable(Depot depot) {
        return depot.getAlternativeTariffs().stream().filter(t -> TariffFaults.of(t).isEmpty()).toList();
    }

    /** What can be ordered: site works, then upgrades of the service. */
    static List<SiteWork> works(Depot depot) {
        return Stream.concat(depot.getWorks().stream(), depot.getUpgrades().stream()).toList();
    }

    /** Hours in which buses may be charged: those of the study where charging starts at a set time, else all. */
    private static ChargeWindow window(Depot depot) {
        return depot.getChargingPolicy() == ChargingPolicy.SET_TIME
                ? new ChargeWindow(depot.getChargeWindowStartMin(), depot.getChargeWindowEndMin()) : new ChargeWindow(0, 0);
    }

    private ChargingRules charging(Depot depot) {
        return new ChargingRules(rule(depot), depot.getStepMin(), BuildingCompiler.compile(depot),
                new SwapTimes(depot.getSwapFromMin(), depot.getSwapToMin()), depot.getSwapCost(),
                new BatteryOffer(depot.getBatteryPricePerKwh(), depot.getBatteryKwPerKwh(), depot.getBatteryLifeYears()),
                settings.getCalendarYear() > 0 ? OptionalInt.of(settings.getCalendarYear()) : OptionalInt.empty());
    }

    private static ChargeRule rule(Depot depot) {
        ChargePolicy policy = switch (depot.getChargingPolicy()) {
            case AT_ONCE -> ChargePolicy.AT_ONCE;
            case SET_TIME -> ChargePolicy.SET_TIME;
            case SPREAD -> ChargePolicy.SPREAD;
            case LEAST_COST -> ChargePolicy.LEAST_COST;
            case CAPPED -> ChargePolicy.CAPPED;
        };
        return new ChargeRule(policy, depot.getChargeWindowStartMin(), depot.getChargeWindowEndMin(),
                depot.getChargingCapKw() > 0 ? depot.getChargingCapKw() : Double.POSITIVE_INFINITY);
    }

    /** Power behind the best AC port on offer, else behind the best of the others, kW: what a bus can count on. */
    static double portKw(Depot depot) {
        return Port.countedKw(depot.getPortTypes().stream().map(DepotCompiler::port).toList(), Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY);
    }

    private static Port port(PortType type) {
        return new Port(type.getName(), type.getKind() == PortKind.DC, type.getPowerKw(), type.getEfficiency(),
                type.getStandbyW(), type.getHardwarePrice(), type.getInstallationPrice(), type.getLifeYears(),
                type.getInstallationLifeYears(), type.getFeePerYear(), type.getPlugs());
    }

    private static DepotInput.SiteWork work(SiteWork work) {
        Optional<DepotInput.Upgrade> upgrade = work instanceof ServiceUpgrade service
                ? Optional.of(new DepotInput.Upgrade(service.getTransformerKva(), service.getBreakerA(), service.getLeadMonths()))
                : Optional.empty();
        return new DepotInput.SiteWork(work.getName(), work.getPrice(), work.getLifeYears(), upgrade);
    }
}
