package org.amberyard.study;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.depot.TariffInput;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.depot.PortKind;
import org.amberyard.model.depot.PortType;
import org.amberyard.model.depot.SiteWork;
import org.amberyard.model.depot.Tariff;

/** Compiles the yard's electric side. */
final class DepotCompiler {
    private DepotCompiler() {
    }

    static DepotInput compile(Depot depot) {
        ServiceInput service = new ServiceInput(depot.getServiceVoltageV(), depot.getMainBreakerA(),
                depot.getTransformerKva(), depot.getPowerFactor(), depot.getBuildingPeakKw());
        return new DepotInput(depot.getPortTypes().stream().map(DepotCompiler::port).toList(),
                works(depot).stream().map(DepotCompiler::work).toList(), tariff(depot.getTariff()), service,
                new ChargeWindow(depot.getChargeWindowStartMin(), depot.getChargeWindowEndMin()));
    }

    /** What plans can order: works, then service upgrades. */
    static List<SiteWork> works(Depot depot) {
        return Stream.concat(depot.getWorks().stream(), depot.getUpgrades().stream()).toList();
    }

    /** Power behind the best AC port on offer, else behind the best of the others, kW: what a bus can count on. */
    static double portKw(Depot depot) {
        List<Port> ports = depot.getPortTypes().stream().map(DepotCompiler::port).toList();
        boolean alternating = ports.stream().anyMatch(p -> !p.direct());
        return ports.stream().filter(p -> p.direct() != alternating).mapToDouble(p -> p.powerKw() * p.efficiency()).max()
                .orElse(0);
    }

    private static Port port(PortType type) {
        return new Port(type.getName(), type.getKind() == PortKind.DC, type.getPowerKw(), type.getEfficiency(),
                type.getStandbyW(), type.getHardwarePrice(), type.getInstallationPrice(), type.getLifeYears(),
                type.getInstallationLifeYears(), type.getFeePerYear());
    }

    private static DepotInput.SiteWork work(SiteWork work) {
        return new DepotInput.SiteWork(work.getName(), work.getPrice(), work.getLifeYears());
    }

    private static TariffInput tariff(Tariff tariff) {
        if (tariff instanceof FlatTariff flat) {
            return new org.amberyard.core.depot.FlatTariff(flat.getMonthlyCharge(), flat.getEnergyPricePerKwh(),
                    flat.getRiderPerKwh(), flat.getDemandPricePerKw(), flat.getTaxShare());
        }
        throw new IllegalArgumentException("The depot has no tariff of a known kind: " + tariff);
    }
}
