package org.amberyard.core.plan;

import java.util.List;
import java.util.function.Supplier;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.money.StraightLine;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** Prices of new buses, and what is left of buses and their packs, constant money. */
final class BusValues {
    private static final Amount NOTHING = new Amount.Sum("nothing", List.of());

    private final StudyInput study;

    BusValues(StudyInput study) {
        this.study = study;
    }

    /**
     * Value of a bus at an age: a straight line from the price to the value at retirement by age or distance,
     * whichever is nearer. That of a bus bought used begins at its
     * own price when it was bought, falls by age or odometer and never ends above that price.
     */
    Amount bus(Vehicle vehicle, double ageYears) {
        return value(vehicle, ageYears, PriceKind.BUS_AT_RETIREMENT);
    }

    /** Value on which a premium is paid; that of a worn-out bus is never below zero. */
    Amount insured(Vehicle vehicle, double ageYears) {
        return value(vehicle, ageYears, PriceKind.INSURED_AT_RETIREMENT);
    }

    private Amount value(Vehicle vehicle, double ageYears, PriceKind atEnd) {
        return vehicle.used().map(used -> used(vehicle, used.as(), ageYears, atEnd))
                .orElseGet(() -> boughtNew(vehicle, ageYears, atEnd));
    }

    private Amount used(Vehicle vehicle, SecondHand as, double ageYears, PriceKind atEnd) {
        double left = lifeLeft(vehicle, ageYears);
        UnitPrice prices = PriceKind.BUS_PRICES.of(vehicle.type());
        Derivation age = Derivation.of("age", ageYears, "year", "year less entry into service");
        Derivation odometer = Derivation.of("odometer", vehicle.odometerKm(), "km", "when bought and driven since");
        Supplier<Derivation> share = () -> Derivation.of("share of the price paid that is left", left, "",
                "straight line over the life left when it was bought, by age or odometer", age, odometer);
        Amount lesser = new Amount.Lesser("value at retirement, not above the price paid",
                Amount.of(1 - left, atEnd.of(vehicle.type()), "share of that life gone", ""),
                Amount.of((1 - left) * as.price(), prices, "that share of the price paid", Derivation.MONEY));
        return new Amount.Sum("value of " + vehicle.unit(), List.of(Amount.of(left * as.price(), prices,
                () -> Derivation.product("part of the price paid", Derivation.MONEY, Derivation.of("price paid for the used bus",
                        as.price(), Derivation.MONEY, "step of the plan, base-date money"), share.get())),
                lesser));
    }

    /** Share of the life over which the value of a bus falls that is left. */
    private double lifeLeft(Vehicle vehicle, double ageYears) {
        VehiclePrices prices = study.types().get(vehicle.type()).prices();
        return vehicle.used().map(used -> used.as().lifeLeft(ageYears, vehicle.odometerKm(), prices))
                .orElseGet(() -> Math.min(StraightLine.lifeLeft(ageYears, prices.lifeYears()),
                        StraightLine.lifeLeft(vehicle.odometerKm(), prices.lifeKm())));
    }

    private Amount boughtNew(Vehicle vehicle, double ageYears, PriceKind atEnd) {
        double left = lifeLeft(vehicle, ageYears);
        return new Amount.Sum("value of " + vehicle.unit(), List.of(
                Amount.of(left, PriceKind.NEW_BUS.of(vehicle.type()), () -> share("share of its life left", left, ageYears, vehicle)),
                Amount.of(1 - left, atEnd.of(vehicle.type()),
                        () -> share("share of its life gone", 1 - left, ageYears, vehicle))));
    }

    private Derivation share(String name, double share, double ageYears, Vehicle vehicle) {
        VehicleTypeInput type = study.types().get(vehicle.type());
        return Derivation.of(name, share, "", "straight line over the life by age or by distance, whichever leaves less",
                Derivation.of("age", ageYears, "year", "year less entry into service"),
                Derivation.input("life", type.prices().lifeYears(), "year", new InputRef(type.kind(), type.name(), "lifeYears")),
                Derivation.of("odometer", vehicle.odometerKm(), "km", "that of today and what is driven since"),
                Derivation.input("life", type.prices().lifeKm(), "km", new InputRef(type.kind(), type.name(), "lifeKm")));
    }

    /**
     * What the pack of a bus of an age makes the bus worth more than {@link #bus} says, at the price of a new pack then; below
     * zero where it makes it worth less. The straight line of the bus holds a pack as old as the bus: a replacement counts by
     * what it is ahead of that or behind it, the pack that the bus came with only where it has worn faster than the bus. The price of
     * a used bus held the life that its pack had left.
     */
    Amount pack(Vehicle vehicle, double ageYears) {
        return study.types().get(vehicle.type()).electric().map(ElectricSpec::battery).map(battery -> {
            double kwh = battery.nominalKwh() * packShare(vehicle, ageYears, battery);
            return Amount.of(kwh, PriceKind.NEW_PACK.one(), "pack ahead of its bus", "kWh");
        }).orElse(NOTHING);
    }

    private double packShare(Vehicle vehicle, double ageYears, BatterySpec battery) {
        double held = vehicle.used().map(Vehicle.Used::packLifeLeft).orElse(1.0) * lifeLeft(vehicle, ageYears);
        double left = PackReplacement.lifeLeft(battery, vehicle.pack().wear());
        double share = vehicle.pack().priceShare();
        return share > 0 ? share * left - held : Math.min(0, left - held);
    }

    /**
     * What the sale of a bus at an age brings. A pack that is ahead of the bus brings no more than an old pack sold by itself, and
     * nothing where old packs bring nothing.
     */
    Amount sold(Vehicle vehicle, double ageYears) {
        return new Amount.Sum("sale of " + vehicle.unit(), List.of(bus(vehicle, ageYears),
                new Amount.Lesser("what its pack adds", pack(vehicle, ageYears), oldPack(vehicle, 1, PriceKind.USABLE_OLD_PACK))));
    }

    /** What a bus brings that a programme has scrapped, at whatever age: nothing, or what it costs to get rid of the bus and its pack. */
    Amount scrapped(Vehicle vehicle) {
        Amount bus = Amount.of(1, PriceKind.BUS_AT_RETIREMENT.of(vehicle.type()), "a bus of no use", "");
        return new Amount.Sum("scrapping of " + vehicle.unit(), List.of(new Amount.Lesser("the bus brings nothing", bus, NOTHING),
                new Amount.Lesser("its pack brings nothing", oldPack(vehicle, 1), NOTHING)));
    }

    /** What a share of the pack of a bus brings by itself; it follows the price path of packs. */
    Amount oldPack(Vehicle vehicle, double share) {
        return oldPack(vehicle, share, PriceKind.OLD_PACK);
    }

    private Amount oldPack(Vehicle vehicle, double share, PriceKind price) {
        return study.types().get(vehicle.type()).electric().map(e -> Amount.of(share * e.battery().nominalKwh() * vehicle.health(),
                price.of(vehicle.type()), "capacity left in the old pack", "kWh")).orElse(NOTHING);
    }
}
