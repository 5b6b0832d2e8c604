package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.amberyard.core.finance.DepreciatedAsset;
import org.amberyard.core.finance.Depreciation;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.money.CostCategory;

/**
 * What a taxed operator writes off. The basis of an asset is its price less what programmes award for it. Buses of the present
 * fleet count as written off, so that what their sale brings is gain. A pack that is replaced is an asset of its own, which
 * leaves with its bus.
 */
final class TaxBooks {
    private final StudyInput study;
    private final FleetHistory fleet;
    private final NetPurchases net;
    private final List<DepreciatedAsset> assets = new ArrayList<>();

    TaxBooks(StudyInput study, FleetHistory fleet, NetPurchases net) {
        this.study = study;
        this.fleet = fleet;
        this.net = net;
        TaxRules rules = study.rules().taxes();
        fleet.events().forEach(event -> addBusOrPack(event, rules.buses()));
        for (int year = 0; year < study.years(); year++) {
            addAsset(rules.infrastructure(), net.infrastructure(year), year, OptionalInt.empty());
        }
    }

    private void addBusOrPack(FleetEvent event, Depreciation how) {
        if (event instanceof FleetEvent.Bought) {
            addAsset(how, net.buses(event.place(), event.year()) / count(event), event.year(), sold(event));
        } else if (event instanceof FleetEvent.PackReplaced) {
            double paid = net.costs().amount(event.place(), event.year(), CostCategory.BATTERY_REPLACEMENT);
            addAsset(how, paid / count(event), event.year(), sold(event));
        }
    }

    private void addAsset(Depreciation how, double basis, int year, OptionalInt sold) {
        if (basis > 0) {
            assets.add(new DepreciatedAsset(how, basis, year, sold));
        }
    }

    /** The ledger knows places, not buses: what several events of a kind share is split evenly. */
    private long count(FleetEvent event) {
        return fleet.events().stream().filter(e -> e.getClass() == event.getClass() && e.year() == event.year()
                && e.place() == event.place()).count();
    }

    private OptionalInt sold(FleetEvent event) {
        return fleet.events().stream().filter(e -> e instanceof FleetEvent.Sold
                && e.vehicle().unit().equals(event.vehicle().unit())).mapToInt(FleetEvent::year).findFirst();
    }

    /** Depreciation of a year. */
    double depreciation(int year) {
        return assets.stream().mapToDouble(asset -> asset.deduction(year)).sum();
    }

    /** Gain on the buses sold in a year over what was left on the books; a loss is negative. */
    double gain(int year) {
        double left = assets.stream().filter(a -> a.soldYear().isPresent() && a.soldYear().getAsInt() == year)
                .mapToDouble(a -> a.basisAfter(year)).sum();
        return -net.costs().amount(year, CostCategory.BUS_SALE) - left;
    }

    /** On the books at the end of the study. */
    double leftAtEnd() {
        int last = study.years() - 1;
        return assets.stream().filter(a -> a.soldYear().isEmpty() || a.soldYear().getAsInt() > last)
                .mapToDouble(a -> a.basisAfter(last)).sum();
    }
}
