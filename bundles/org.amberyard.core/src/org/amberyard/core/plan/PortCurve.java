package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.charging.PortMixSearch;
import org.amberyard.core.charging.PortOption;
import org.amberyard.core.depot.Port;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.yard.YardInput;
import org.amberyard.core.yard.YardPlanner;

/**
 * The cheapest ports that have every bus of a yard ready on every day of a year, for each number of ports. Ports count with the
 * capital recovery of hardware and installation over their lives and with their fee, base-date money per year.
 *
 * @param options port types on offer
 * @param byNumber the cheapest mix of each number that serves, fewest ports first
 */
public record PortCurve(List<PortOption> options, List<PortMix> byNumber) {

    public PortCurve {
        options = List.copyOf(options);
        byNumber = List.copyOf(byNumber);
    }

    /** The curve of a yard in a year. */
    public static PortCurve of(StudyInput study, YardInput yard) {
        List<PortOption> options = study.depot().ports().stream()
                .map(port -> new PortOption(port, port.plugs(), perYear(study, port), yard.buses().size())).toList();
        PortMixSearch search = new PortMixSearch(options, new YardPlanner(yard).stretches(), yard.rule(),
                study.depot().charging().swapCost());
        return new PortCurve(options, search.byNumber());
    }

    private static double perYear(StudyInput study, Port port) {
        double rate = study.money().rates().real();
        return port.hardwarePrice() * DiscountFactor.capitalRecovery(rate, port.lifeYears())
                + port.installationPrice() * DiscountFactor.capitalRecovery(rate, port.installationLifeYears())
                + port.feePerYear();
    }

    /** The cheapest of all. */
    public Optional<PortMix> cheapest() {
        return PortMixSearch.cheapest(byNumber);
    }

    /** Power of a mix, kW. */
    public double connectedKw(PortMix mix) {
        return mix.units(options).stream().mapToDouble(u -> u.port().powerKw()).sum();
    }
}
