package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;

/** Costs that belong to a place in the fleet: buying, selling, packs, fuel, upkeep, insurance and fees. */
final class FleetCosts {
    private final StudyInput study;
    private final FleetHistory fleet;
    private final List<UpkeepYear> upkeep;
    private final CostLedger.Builder ledger;
    private final BusValues values;

    FleetCosts(StudyInput study, FleetHistory fleet, List<UpkeepYear> upkeep, CostLedger.Builder ledger) {
        this.study = study;
        this.fleet = fleet;
        this.upkeep = upkeep;
        this.ledger = ledger;
        this.values = new BusValues(study);
    }

    /** Rows of a plan's ledger: the places in the fleet and the yard. */
    static List<String> rows(StudyInput study) {
        List<String> rows = new ArrayList<>(study.buses().stream().map(BusInput::name).toList());
        rows.add("Yard");
        return rows;
    }

    void add() {
        fleet.events().forEach(this::addEvent);
        upkeep.forEach(this::addYear);
        for (int place = 0; place < fleet.fleetAtEnd().size(); place++) {
            Optional<Vehicle> vehicle = fleet.fleetAtEnd().get(place);
            if (vehicle.isPresent()) {
                addWhatIsLeft(place, vehicle.get());
            }
        }
    }

    private void addEvent(FleetEvent event) {
        int year = event.year();
        if (event instanceof FleetEvent.Bought bought) {
            ledger.add(event.place(), year, CostCategory.BUS_PURCHASE, values.price(bought.vehicle().type(), year));
        } else if (event instanceof FleetEvent.Sold sold) {
            ledger.add(event.place(), year, CostCategory.BUS_SALE, sold.scrapped() ? 0 : -values.sale(sold.vehicle(), year));
        } else if (event instanceof FleetEvent.PackReplaced replaced) {
            ledger.add(event.place(), year, CostCategory.BATTERY_REPLACEMENT, replaced.bill().paid());
        }
    }

    private void addWhatIsLeft(int place, Vehicle vehicle) {
        int last = study.years() - 1;
        double age = vehicle.ageYears(study.years());
        double left = values.ofBus(vehicle, age, last, CostCategory.BUS_VALUE_LEFT);
        ledger.add(place, last, CostCategory.BUS_VALUE_LEFT, -left);
        ledger.add(place, last, CostCategory.PACK_LIFE_LEFT, -values.ofPack(vehicle, age, last, CostCategory.PACK_LIFE_LEFT));
    }

    private void addYear(UpkeepYear kept) {
        VehicleYear record = kept.record();
        study.types().get(record.vehicle().type()).engine().ifPresent(engine -> {
            addFuel(record, CostCategory.FUEL, engine.fuel(), record.use().fuelL());
            double fluidL = record.use().fuelL() * engine.exhaustFluidShare();
            double time = study.money().time(CostCategory.EXHAUST_FLUID, record.year());
            add(record, CostCategory.EXHAUST_FLUID, fluidL * study.prices().exhaustFluid().at(record.year(), time));
        });
        addFuel(record, CostCategory.HEATER_FUEL, FuelKind.DIESEL, record.use().heaterFuelL());
        addUpkeep(record, kept.cost());
    }

    private void addFuel(VehicleYear record, CostCategory category, FuelKind fuel, double litres) {
        if (litres > 0) {
            double time = study.money().time(category, record.year());
            add(record, category, litres * study.prices().fuels().get(fuel).at(record.year(), time));
        }
    }

    private void addUpkeep(VehicleYear record, double upkeepCost) {
        VehiclePrices prices = study.types().get(record.vehicle().type()).prices();
        double age = record.vehicle().ageYears(record.year());
        double time = study.money().time(CostCategory.UPKEEP, record.year());
        double index = study.prices().index(PriceDeck.Subject.UPKEEP, record.year(), time);
        add(record, CostCategory.UPKEEP, upkeepCost * index);
        double insured = values.ofBus(record.vehicle(), age, record.year(), CostCategory.UPKEEP);
        add(record, CostCategory.INSURANCE, insured * study.rules().insuranceShare() * index);
        add(record, CostCategory.REGISTRATION, prices.registrationPerYear() * index);
    }

    private void add(VehicleYear record, CostCategory category, double constant) {
        ledger.add(record.place(), record.year(), category, constant);
    }
}
