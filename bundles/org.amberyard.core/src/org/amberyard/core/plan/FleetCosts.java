package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;

/** Costs that belong to a place in the fleet: buying, selling, packs, fuel, upkeep, insurance and fees. */
final class FleetCosts {
    private final StudyInput study;
    private final FleetHistory fleet;
    private final List<UpkeepYear> upkeep;
    private final CostLedger.Builder ledger;

    FleetCosts(StudyInput study, FleetHistory fleet, List<UpkeepYear> upkeep, CostLedger.Builder ledger) {
        this.study = study;
        this.fleet = fleet;
        this.upkeep = upkeep;
        this.ledger = ledger;
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
            ledger.add(event.place(), year, CostCategory.BUS_PURCHASE, price(bought.vehicle().type(), year));
        } else if (event instanceof FleetEvent.Sold sold) {
            double value = value(sold.vehicle(), year, CostCategory.BUS_SALE, year)
                    + packValue(sold.vehicle(), year, CostCategory.BUS_SALE);
            ledger.add(event.place(), year, CostCategory.BUS_SALE, sold.scrapped() ? 0 : -value);
        } else if (event instanceof FleetEvent.PackReplaced replaced) {
            ledger.add(event.place(), year, CostCategory.BATTERY_REPLACEMENT, replaced.bill().paid());
        }
    }

    /** Price of a new bus of a type at the start of a year, constant money. */
    double price(int type, int year) {
        return study.types().get(type).prices().purchase() * busIndex(type, year, year);
    }

    private double busIndex(int type, int year, double time) {
        PriceDeck.Subject subject = study.types().get(type).electric().isPresent() ? PriceDeck.Subject.ELECTRIC_BUS
                : PriceDeck.Subject.ENGINE_BUS;
        return study.prices().index(subject, year, time);
    }

    private double value(Vehicle vehicle, int ageInYear, CostCategory category, int year) {
        double time = study.money().time(category, year);
        return study.types().get(vehicle.type()).prices().value(vehicle.ageYears(ageInYear))
                * busIndex(vehicle.type(), year, time);
    }

    /** What is left of a replacement pack, at the price of a new one then; the pack that the bus came with is part of the bus. */
    private double packValue(Vehicle vehicle, int year, CostCategory category) {
        Optional<BatterySpec> pack = study.types().get(vehicle.type()).electric().map(ElectricSpec::battery)
                .filter(b -> vehicle.pack().paid() > 0);
        double price = study.prices().pack().at(year, study.money().time(category, year));
        return pack.map(b -> b.nominalKwh() * price
                * PackReplacement.lifeLeft(b, vehicle.pack().wear())).orElse(0.0);
    }

    private void addWhatIsLeft(int place, Vehicle vehicle) {
        int last = study.years() - 1;
        double left = value(vehicle, study.years(), CostCategory.BUS_VALUE_LEFT, last);
        ledger.add(place, last, CostCategory.BUS_VALUE_LEFT, -left);
        ledger.add(place, last, CostCategory.PACK_LIFE_LEFT,
                -packValue(vehicle, last, CostCategory.PACK_LIFE_LEFT));
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
        double insured = prices.value(age) * busIndex(record.vehicle().type(), record.year(), time);
        add(record, CostCategory.INSURANCE, insured * study.rules().insuranceShare() * index);
        add(record, CostCategory.REGISTRATION, prices.registrationPerYear() * index);
    }

    private void add(VehicleYear record, CostCategory category, double constant) {
        ledger.add(record.place(), record.year(), category, constant);
    }
}
