package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.OldBus;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.why.Derivation;

/**
 * The lines of a plan that programmes may pay for: every bus that is bought, ports, site works, training and tools. They are
 * laid out once and can be priced again and again.
 */
final class PurchaseLines {
    private final StudyInput study;
    private final PlanInput plan;
    private final FleetHistory fleet;
    private final FundingInput.Declared declared;
    private final int yardRow;
    private final List<Function<PurchasePrices, Purchase>> lines = new ArrayList<>();

    PurchaseLines(StudyInput study, PlanInput plan, FleetHistory fleet) {
        this.study = study;
        this.plan = plan;
        this.fleet = fleet;
        this.declared = study.funding().declared();
        this.yardRow = study.buses().size();
        for (FleetEvent event : fleet.events()) {
            if (event instanceof FleetEvent.Bought bought) {
                lines.add(bus(bought));
            }
        }
        plan.ports().stream().filter(p -> p.year() >= 0).forEach(p -> lines.add(prices -> ports(p, prices)));
        plan.works().stream().filter(w -> w.year() >= 0).forEach(w -> lines.add(prices -> shared(Purchase.Kind.SITE_WORK,
                study.depot().works().get(w.work()).name(), w.year(), prices.work(w), w.programmes())));
        plan.oneOffs().forEach(o -> lines.add(prices -> shared(Purchase.Kind.TRAINING, o.name(), o.year(), prices.oneOff(o),
                o.programmes())));
    }

    /** The lines at the prices of a study. */
    List<Purchase> at(PriceBook book) {
        PurchasePrices prices = new PurchasePrices(book);
        return lines.stream().map(line -> line.apply(prices)).toList();
    }

    private Purchase shared(Purchase.Kind kind, String name, int year, Derivation cost, List<Integer> programmes) {
        return new Purchase(kind, name, yardRow, year, 1, List.of(cost), Optional.empty(), true, programmes);
    }

    private Purchase ports(PlanInput.PortPurchase bought, PurchasePrices prices) {
        String name = bought.count() + " × " + study.depot().ports().get(bought.port()).name();
        return new Purchase(Purchase.Kind.PORTS, name, yardRow, bought.year(), bought.count(), prices.ports(bought),
                Optional.empty(), declared.domesticPorts().contains(bought.port()), bought.programmes());
    }

    private Function<PurchasePrices, Purchase> bus(FleetEvent.Bought bought) {
        VehicleTypeInput type = study.types().get(bought.vehicle().type());
        String unit = bought.vehicle().unit();
        int compared = comparedType(bought);
        Optional<OldBus> old = old(bought);
        boolean leaves = oneLeaves(bought);
        Optional<UsedPrice> used = bought.vehicle().used().map(u -> new UsedPrice(study, plan, bought, u.as()));
        boolean domestic = declared.domesticTypes().contains(bought.vehicle().type());
        List<Integer> programmes = bought.step().map(PlanInput.Replacement::programmes).orElse(List.of());
        return prices -> new Purchase(Purchase.Kind.BUS, unit + ", " + type.name() + (used.isPresent() ? ", used" : ""),
                bought.place(), bought.year(), 1, List.of(used.map(u -> prices.bus(u, bought.year()))
                        .orElseGet(() -> prices.bus(bought.vehicle().type(), bought.year()))),
                Optional.of(new NewBus(unit, type.spec().body().bodyType(), type.electric().isPresent(), used.isPresent(),
                        prices.bus(compared, bought.year()), old, leaves)),
                domestic, programmes);
    }

    /** The engine bus that would have been bought; the new bus's own type where the line has no engine bus. */
    private int comparedType(FleetEvent.Bought bought) {
        int type = study.types().get(bought.outgoingType()).successor();
        return study.types().get(type).engine().isPresent() ? type : bought.vehicle().type();
    }

    /** The bus that stood in the place until then: it was sold there or moved from there at the start of the year. */
    private Optional<OldBus> old(FleetEvent.Bought bought) {
        return fleet.events().stream().filter(e -> e.year() == bought.year()).filter(e -> leaves(e, bought.place())
                || e instanceof FleetEvent.Moved moved && moved.from() == bought.place()).findFirst()
                .map(e -> oldBus(e.vehicle(), e instanceof FleetEvent.Sold));
    }

    private OldBus oldBus(Vehicle vehicle, boolean leaves) {
        VehicleTypeInput type = study.types().get(vehicle.type());
        boolean diesel = type.engine().filter(e -> e.fuel() == FuelKind.DIESEL).isPresent();
        return new OldBus(vehicle.unit(), type.spec().body().bodyType(), diesel, EngineModelYear.of(study, vehicle), leaves,
                declared.papersOf(vehicle.unit()));
    }

    private boolean oneLeaves(FleetEvent.Bought bought) {
        OptionalInt movedTo = bought.step().map(PlanInput.Replacement::cascadeTo).orElse(OptionalInt.empty());
        return fleet.events().stream().filter(e -> e.year() == bought.year())
                .anyMatch(e -> leaves(e, bought.place()) || movedTo.isPresent() && leaves(e, movedTo.getAsInt()));
    }

    private static boolean leaves(FleetEvent event, int place) {
        return event instanceof FleetEvent.Sold && event.place() == place;
    }
}
