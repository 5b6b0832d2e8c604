package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.why.Derivation;

/** Costs that belong to a place in the fleet: buying, selling, packs, fuel, upkeep, insurance and fees. */
final class FleetCosts {
    private final StudyInput study;
    private final PlanInput plan;
    private final PlanCourse course;
    private final BusValues values;
    private final PackRenewal renewal;
    private final List<CostItem> items = new ArrayList<>();

    private FleetCosts(StudyInput study, PlanInput plan, PlanCourse course) {
        this.study = study;
        this.plan = plan;
        this.course = course;
        PriceBook book = new PriceBook(study);
        this.values = new BusValues(study);
        this.renewal = new PackRenewal(book);
    }

    /** Rows of a plan's ledger: the places in the fleet and the yard. */
    static List<String> rows(StudyInput study) {
        List<String> rows = new ArrayList<>(study.buses().stream().map(BusInput::name).toList());
        rows.add("Yard");
        return rows;
    }

    static List<CostItem> of(StudyInput study, PlanInput plan, PlanCourse course) {
        FleetCosts costs = new FleetCosts(study, plan, course);
        costs.course.fleet().events().forEach(costs::addEvent);
        costs.course.upkeep().forEach(costs::addYear);
        costs.addWhatIsLeft();
        return costs.items;
    }

    private void addEvent(FleetEvent event) {
        if (event instanceof FleetEvent.Bought bought) {
            add(event.place(), event.year(), CostCategory.BUS_PURCHASE, price(bought));
        } else if (event instanceof FleetEvent.Sold sold) {
            double ageYears = sold.vehicle().ageYears(event.year());
            add(event.place(), event.year(), CostCategory.BUS_SALE, new Amount.Credit(
                    sold.scrapped() ? values.scrapped(sold.vehicle()) : values.sold(sold.vehicle(), ageYears)));
        } else if (event instanceof FleetEvent.PackReplaced replaced) {
            add(event.place(), event.year(), CostCategory.BATTERY_REPLACEMENT, renewal.amount(replaced));
        }
    }

    private Amount price(FleetEvent.Bought bought) {
        Vehicle bus = bought.vehicle();
        return bus.used().map(used -> new UsedPrice(study, plan, bought, used.as()).amount())
                .orElseGet(() -> Amount.of(1, PriceKind.NEW_BUS.of(bus.type()), bus.unit() + ", a new bus", ""));
    }

    private void addWhatIsLeft() {
        int last = study.years() - 1;
        for (int place = 0; place < course.fleet().fleetAtEnd().size(); place++) {
            Optional<Vehicle> vehicle = course.fleet().fleetAtEnd().get(place);
            if (vehicle.isPresent()) {
                double age = vehicle.get().ageYears(study.years());
                add(place, last, CostCategory.BUS_VALUE_LEFT, new Amount.Credit(values.bus(vehicle.get(), age)));
                add(place, last, CostCategory.PACK_LIFE_LEFT, new Amount.Credit(values.pack(vehicle.get(), age)));
            }
        }
    }

    private void addYear(UpkeepYear kept) {
        VehicleYear record = kept.record();
        Vehicle bus = record.vehicle();
        study.types().get(bus.type()).engine().ifPresent(engine -> addEngine(record, engine));
        addFuel(record, CostCategory.HEATER_FUEL, FuelKind.DIESEL, record.use().heaterFuelL(), "heater fuel");
        add(record, CostCategory.UPKEEP, Amount.of(kept.cost(), PriceKind.UPKEEP.one(), () -> kept.why()));
        add(record, CostCategory.INSURANCE, new Amount.Premium(values.insured(bus, bus.ageYears(record.year()))));
        add(record, CostCategory.REGISTRATION, Amount.of(1, PriceKind.REGISTRATION.of(bus.type()), bus.unit() + ", a year", ""));
    }

    private void addEngine(VehicleYear record, EngineSpec engine) {
        double fuelL = record.use().fuelL();
        addFuel(record, CostCategory.FUEL, engine.fuel(), fuelL, "fuel");
        Supplier<Derivation> fluid = () -> Derivation.product("exhaust fluid of " + record.vehicle().unit(), "L",
                record.whyDistance(fuelL, "fuel", "L"),
                Derivation.of("exhaust fluid over fuel", engine.exhaustFluidShare(), "", "of the vehicle type"));
        add(record, CostCategory.EXHAUST_FLUID,
                Amount.of(fuelL * engine.exhaustFluidShare(), PriceKind.EXHAUST_FLUID.one(), fluid));
    }

    private void addFuel(VehicleYear record, CostCategory category, FuelKind fuel, double litres, String name) {
        if (litres > 0) {
            add(record, category, Amount.of(litres, PriceKind.FUEL.of(fuel.ordinal()), () -> record.whyDistance(litres, name, "L")));
        }
    }

    private void add(VehicleYear record, CostCategory category, Amount amount) {
        add(record.place(), record.year(), category, amount);
    }

    private void add(int place, int year, CostCategory category, Amount amount) {
        items.add(new CostItem(place, year, category, amount));
    }
}
