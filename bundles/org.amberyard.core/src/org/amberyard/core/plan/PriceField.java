package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.PricePath;

/**
 * A number of a study that is a price or the rise of one, and decides nothing but what things cost.
 *
 * @param kind what it is
 * @param of which fuel, vehicle type, port type, site work or subject of an index is meant; 0 where the kind is one thing
 */
public record PriceField(Kind kind, int of) {

    private interface Reader {
        double of(StudyInput study, int of);
    }

    private interface PathReader {
        PricePath of(StudyInput study, int of);
    }

    /** Kinds of prices, base-date money, and of yearly rises above general inflation, as a share. */
    public enum Kind {
        /** Price of a fuel, money/L. */
        FUEL_PRICE((s, of) -> fuel(s, of).base(), null),
        /** Rise of a fuel's price. */
        FUEL_RISE(null, (s, of) -> fuel(s, of).path()),
        /** Price of exhaust fluid, money/L. */
        FLUID_PRICE((s, of) -> s.prices().exhaustFluid().base(), null),
        /** Rise of that price. */
        FLUID_RISE(null, (s, of) -> s.prices().exhaustFluid().path()),
        /** Price of a new pack, money/kWh. */
        PACK_PRICE((s, of) -> s.prices().pack().base(), null),
        /** Rise of that price. */
        PACK_RISE(null, (s, of) -> s.prices().pack().path()),
        /** Rise of what an index scales. */
        INDEX_RISE(null, (s, of) -> s.prices().path(PriceDeck.Subject.values()[of])),
        /** Price of a new bus of a type. */
        BUS_PRICE((s, of) -> s.types().get(of).prices().purchase(), null),
        /** Value of a bus of a type at retirement. */
        BUS_END_VALUE((s, of) -> s.types().get(of).prices().valueAtRetirement(), null),
        /** Registration and fees of a bus of a type, money per year. */
        REGISTRATION((s, of) -> s.types().get(of).prices().registrationPerYear(), null),
        /** What an old pack of a type brings, money/kWh. */
        PACK_RESALE((s, of) -> s.types().get(of).prices().packs().resalePerKwh(), null),
        /** Work to change a pack of a type. */
        PACK_LABOUR((s, of) -> s.types().get(of).prices().packs().labour(), null),
        /** Price of a port of a type. */
        PORT_HARDWARE((s, of) -> s.depot().ports().get(of).hardwarePrice(), null),
        /** Price to install a port of a type. */
        PORT_INSTALLATION((s, of) -> s.depot().ports().get(of).installationPrice(), null),
        /** Network fee of a port of a type, money per year. */
        PORT_FEE((s, of) -> s.depot().ports().get(of).feePerYear(), null),
        /** Price of a site work. */
        SITE_WORK((s, of) -> s.depot().works().get(of).price(), null),
        /** Cost to move a plug. */
        SWAP_COST((s, of) -> s.depot().charging().swapCost(), null);

        private final Reader reader;
        private final PathReader path;

        Kind(Reader price, PathReader path) {
            this.reader = path == null ? price : (s, of) -> path.of(s, of).realRise();
            this.path = path;
        }

        double in(StudyInput study, int of) {
            return reader.of(study, of);
        }

        private static PriceDeck.Price fuel(StudyInput study, int of) {
            return study.prices().fuels().get(FuelKind.values()[of]);
        }
    }

    /** Its value in a study. */
    public double in(StudyInput study) {
        return kind.in(study, of);
    }

    /** The path that a rise belongs to. */
    PricePath path(StudyInput study) {
        return kind.path.of(study, of);
    }

    /** All of a study. */
    public static List<PriceField> all(StudyInput study) {
        List<PriceField> fields = new ArrayList<>();
        study.prices().fuels().keySet().stream().sorted().forEach(fuel -> add(fuel.ordinal(), fields, Kind.FUEL_PRICE, Kind.FUEL_RISE));
        add(0, fields, Kind.FLUID_PRICE, Kind.FLUID_RISE, Kind.PACK_PRICE, Kind.PACK_RISE, Kind.SWAP_COST);
        study.prices().indices().keySet().stream().sorted().forEach(subject -> add(subject.ordinal(), fields, Kind.INDEX_RISE));
        IntStream.range(0, study.types().size()).forEach(type -> add(type, fields, Kind.BUS_PRICE, Kind.BUS_END_VALUE,
                Kind.REGISTRATION, Kind.PACK_RESALE, Kind.PACK_LABOUR));
        IntStream.range(0, study.depot().ports().size())
                .forEach(port -> add(port, fields, Kind.PORT_HARDWARE, Kind.PORT_INSTALLATION, Kind.PORT_FEE));
        IntStream.range(0, study.depot().works().size()).forEach(work -> add(work, fields, Kind.SITE_WORK));
        return fields;
    }

    private static void add(int of, List<PriceField> fields, Kind... kinds) {
        for (Kind kind : kinds) {
            fields.add(new PriceField(kind, of));
        }
    }
}
