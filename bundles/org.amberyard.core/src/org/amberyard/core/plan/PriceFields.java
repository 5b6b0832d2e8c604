package org.amberyard.core.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.plan.PriceField.Kind;

/** A study whose prices are others. */
public final class PriceFields {
    private final StudyInput study;
    private final ToDoubleFunction<PriceField> values;

    private PriceFields(StudyInput study, ToDoubleFunction<PriceField> values) {
        this.study = study;
        this.values = values;
    }

    /** A study with all its {@link PriceField}s at values. */
    public static StudyInput at(StudyInput study, ToDoubleFunction<PriceField> values) {
        PriceFields fields = new PriceFields(study, values);
        List<VehicleTypeInput> types = IntStream.range(0, study.types().size()).mapToObj(fields::type).toList();
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(), types,
                study.buses(), fields.depot(), fields.deck(), study.funding(), study.air(), study.rules(), study.plans(),
                study.baseline(), study.trips(), study.actuals());
    }

    /** True when studies differ in their price fields alone. */
    public static boolean alone(StudyInput one, StudyInput other) {
        return one.types().size() == other.types().size() && one.depot().ports().size() == other.depot().ports().size()
                && one.depot().works().size() == other.depot().works().size()
                && one.prices().fuels().keySet().equals(other.prices().fuels().keySet())
                && one.prices().indices().keySet().equals(other.prices().indices().keySet())
                && at(one, field -> field.in(other)).equals(other);
    }

    private double value(Kind kind, int of) {
        return values.applyAsDouble(new PriceField(kind, of));
    }

    private PriceDeck deck() {
        PriceDeck deck = study.prices();
        Map<FuelKind, PriceDeck.Price> fuels = new EnumMap<>(FuelKind.class);
        deck.fuels().forEach((fuel, price) -> fuels.put(fuel, price(price, Kind.FUEL_PRICE, Kind.FUEL_RISE, fuel.ordinal())));
        Map<PriceDeck.Subject, PricePath> indices = deck.indices().entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                e -> path(e.getValue(), Kind.INDEX_RISE, e.getKey().ordinal())));
        return new PriceDeck(fuels, price(deck.exhaustFluid(), Kind.FLUID_PRICE, Kind.FLUID_RISE, 0),
                price(deck.pack(), Kind.PACK_PRICE, Kind.PACK_RISE, 0), indices, deck.steady());
    }

    private PriceDeck.Price price(PriceDeck.Price price, Kind base, Kind rise, int of) {
        return new PriceDeck.Price(value(base, of), path(price.path(), rise, of));
    }

    private PricePath path(PricePath path, Kind rise, int of) {
        return path.rising(value(rise, of));
    }

    private VehicleTypeInput type(int of) {
        VehicleTypeInput type = study.types().get(of);
        VehiclePrices prices = type.prices();
        PackPrices packs = new PackPrices(value(Kind.PACK_LABOUR, of), value(Kind.PACK_RESALE, of), prices.packs().warranty(),
                prices.packs().refurbished());
        return type.at(new VehiclePrices(value(Kind.BUS_PRICE, of), prices.lifeYears(), prices.lifeKm(), prices.spareExtraYears(),
                value(Kind.BUS_END_VALUE, of), prices.upkeep(), value(Kind.REGISTRATION, of), prices.fuelFiredHeater(), packs));
    }

    private DepotInput depot() {
        DepotInput depot = study.depot();
        List<Port> ports = IntStream.range(0, depot.ports().size()).mapToObj(i -> port(depot.ports().get(i), i)).toList();
        List<DepotInput.SiteWork> works = IntStream.range(0, depot.works().size()).mapToObj(i -> {
            DepotInput.SiteWork work = depot.works().get(i);
            return new DepotInput.SiteWork(work.name(), value(Kind.SITE_WORK, i), work.lifeYears(), work.upgrade());
        }).toList();
        ChargingRules rules = depot.charging();
        return new DepotInput(ports, works, depot.service(), depot.window(), depot.metering(), depot.alternatives(),
                new ChargingRules(rules.rule(), rules.stepMin(), rules.building(), rules.swaps(), value(Kind.SWAP_COST, 0),
                        rules.battery(), rules.calendarYear()),
                depot.bills());
    }

    private Port port(Port port, int of) {
        return new Port(port.name(), port.direct(), port.powerKw(), port.efficiency(), port.standbyW(),
                value(Kind.PORT_HARDWARE, of), value(Kind.PORT_INSTALLATION, of), port.lifeYears(), port.installationLifeYears(),
                value(Kind.PORT_FEE, of), port.plugs());
    }
}
