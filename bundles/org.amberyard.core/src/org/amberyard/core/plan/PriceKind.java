package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.plan.PriceField.Kind;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/**
 * What has a price: an amount at the base date, which is an input or the money of the base date itself, and a path over the
 * years. The number beside the kind tells which fuel, vehicle type, port type or site work is meant.
 */
enum PriceKind {
    /** Money of the base date that keeps its worth. */
    MONEY("base-date money", "", flat(), none()),
    /** Money of the base date that moves as energy charges do. */
    ENERGY_CHARGES("energy charges", "", as(PriceDeck.Subject.ELECTRIC_ENERGY), none()),
    /** Money of the base date that moves as demand charges do. */
    DEMAND_CHARGES("demand charges", "", as(PriceDeck.Subject.ELECTRIC_DEMAND), none()),
    /** Money of the base date that moves as fixed charges do. */
    FIXED_CHARGES("fixed electric charges", "", as(PriceDeck.Subject.ELECTRIC_FIXED), none()),
    /** Money of the base date that moves as upkeep does. */
    UPKEEP("upkeep", "", as(PriceDeck.Subject.UPKEEP), none()),
    /** Money of the base date that moves as prices of new buses of a type do. */
    BUS_PRICES("prices of buses", "", buses(), none()),
    FUEL("price of fuel", "money/L", new Path((s, of) -> new PriceField(Kind.FUEL_RISE, of),
            (s, of) -> rise("FuelPrice", FuelKind.values()[of].word())),
            (s, of) -> ref("FuelPrice", FuelKind.values()[of].word(), "pricePerL"), Kind.FUEL_PRICE),
    EXHAUST_FLUID("price of exhaust fluid", "money/L", new Path((s, of) -> new PriceField(Kind.FLUID_RISE, 0),
            (s, of) -> rise("FluidPrice", "")), (s, of) -> ref("FluidPrice", "", "pricePerL"), Kind.FLUID_PRICE),
    NEW_PACK("price of a new pack", "money/kWh", packs(), (s, of) -> ref("PackPrice", "", "pricePerKwh"), Kind.PACK_PRICE),
    OLD_PACK("price of an old pack", "money/kWh", packs(), (s, of) -> ofType(s, of, "packResalePerKwh"), Kind.PACK_RESALE),
    /** The same where it is something: a pack that goes on with its bus is not to be disposed of. */
    USABLE_OLD_PACK("price of an old pack that is still used", "money/kWh", packs(), (s, of) -> ofType(s, of, "packResalePerKwh"),
            Kind.PACK_RESALE) {
        @Override
        double floor() {
            return 0;
        }
    },
    PACK_LABOUR("work to change a pack", "money", as(PriceDeck.Subject.UPKEEP), (s, of) -> ofType(s, of, "replacementLabour"),
            Kind.PACK_LABOUR),
    NEW_BUS("price of a new bus", "money", buses(), (s, of) -> ofType(s, of, "purchasePrice"), Kind.BUS_PRICE),
    BUS_AT_RETIREMENT("value of a bus at retirement age", "money", buses(), (s, of) -> ofType(s, of, "valueAtRetirement"),
            Kind.BUS_END_VALUE, Kind.BUS_PRICE),
    /** The same without the cost of getting rid of a worn-out bus, which nobody insures. */
    INSURED_AT_RETIREMENT("insured value of a bus at retirement age", "money", buses(), (s, of) -> ofType(s, of, "valueAtRetirement"),
            Kind.BUS_END_VALUE, Kind.BUS_PRICE) {
        @Override
        double floor() {
            return 0;
        }
    },
    REGISTRATION("registration and fees of a bus", "money", as(PriceDeck.Subject.UPKEEP),
            (s, of) -> ofType(s, of, "registrationPerYear"), Kind.REGISTRATION),
    PORT_HARDWARE("price of a port", "money", as(PriceDeck.Subject.INFRASTRUCTURE), (s, of) -> ofPort(s, of, "hardwarePrice"),
            Kind.PORT_HARDWARE),
    PORT_INSTALLATION("price to install a port", "money", as(PriceDeck.Subject.INFRASTRUCTURE),
            (s, of) -> ofPort(s, of, "installationPrice"), Kind.PORT_INSTALLATION),
    PORT_FEE("network fee of a port", "money", as(PriceDeck.Subject.UPKEEP), (s, of) -> ofPort(s, of, "feePerYear"), Kind.PORT_FEE),
    SITE_WORK("price of a site work", "money", as(PriceDeck.Subject.INFRASTRUCTURE),
            (s, of) -> ref("SiteWork", s.depot().works().get(of).name(), "price"), Kind.SITE_WORK),
    PLUG_SWAP("cost to move a plug", "money", as(PriceDeck.Subject.UPKEEP), (s, of) -> ref("Depot", "", "swapCost"), Kind.SWAP_COST);

    private interface FieldOf {
        PriceField of(StudyInput study, int of);
    }

    /** A path by its rise, none where it is flat, and the input that says how it rises where there is one. */
    private record Path(FieldOf rise, Source input) {
    }

    private interface Source {
        InputRef of(StudyInput study, int of);
    }

    private final String label;
    private final String unit;
    private final Path path;
    private final Source source;
    private final List<Kind> bases;

    /** A price that is the least of the fields that it begins at, or 1 where there is none. */
    PriceKind(String label, String unit, Path path, Source source, Kind... bases) {
        this.label = label;
        this.unit = unit;
        this.path = path;
        this.source = source;
        this.bases = List.of(bases);
    }

    private static Path flat() {
        return new Path((study, of) -> null, none());
    }

    private static Path as(PriceDeck.Subject subject) {
        return new Path((study, of) -> new PriceField(Kind.INDEX_RISE, subject.ordinal()), (study, of) -> risesAs(subject));
    }

    private static InputRef rise(String kind, String element) {
        return ref(kind, element, "escalationPerYear");
    }

    private static InputRef risesAs(PriceDeck.Subject subject) {
        return rise("CostIndex", subject.label());
    }

    private static Source none() {
        return (study, of) -> null;
    }

    private static InputRef ref(String kind, String element, String field) {
        return new InputRef(kind, element, field);
    }

    private static InputRef ofType(StudyInput study, int type, String field) {
        return ref(study.types().get(type).kind(), study.types().get(type).name(), field);
    }

    private static InputRef ofPort(StudyInput study, int port, String field) {
        return ref("PortType", study.depot().ports().get(port).name(), field);
    }

    private static Path packs() {
        return new Path((s, of) -> new PriceField(Kind.PACK_RISE, 0), (s, of) -> rise("PackPrice", ""));
    }

    private static Path buses() {
        return new Path((s, of) -> new PriceField(Kind.INDEX_RISE, busSubject(s, of).ordinal()),
                (s, of) -> risesAs(busSubject(s, of)));
    }

    private static PriceDeck.Subject busSubject(StudyInput study, int type) {
        return study.types().get(type).electric().isPresent() ? PriceDeck.Subject.ELECTRIC_BUS : PriceDeck.Subject.ENGINE_BUS;
    }

    /** One thing of the kind. */
    UnitPrice of(int which) {
        return new UnitPrice(this, which);
    }

    /** Where the kind is one thing. */
    UnitPrice one() {
        return of(0);
    }

    /** The fields of which the least, not below the floor, is the base-date price; empty for money of the base date itself. */
    List<PriceField> bases(int of) {
        return bases.stream().map(kind -> new PriceField(kind, of)).toList();
    }

    /** The rise of the path that it moves on; empty where it keeps its worth. */
    Optional<PriceField> rise(StudyInput study, int of) {
        return Optional.ofNullable(path.rise().of(study, of));
    }

    /** The path that it moves on. */
    PricePath path(StudyInput study, int of) {
        return rise(study, of).map(r -> r.path(study)).orElse(study.prices().steady());
    }

    /** Base-date price below which it does not go. */
    double floor() {
        return Double.NEGATIVE_INFINITY;
    }

    /** What has the price, with the name of the element where it belongs to one. */
    String name(StudyInput study, int of) {
        InputRef named = source.of(study, of) == null ? path.input().of(study, of) : source.of(study, of);
        return named == null || named.element().isEmpty() ? label : label + ", " + named.element();
    }

    /** Unit of the price; empty for money of the base date. */
    String unit() {
        return unit;
    }

    /** Price at the base date. */
    double base(StudyInput study, int of) {
        double least = bases.isEmpty() ? 1 : Double.POSITIVE_INFINITY;
        for (Kind kind : bases) {
            least = Math.min(least, kind.in(study, of));
        }
        return Math.max(floor(), least);
    }

    /** Price in a year at the time of a category, constant money. */
    double at(StudyInput study, int of, int year, CostCategory category) {
        return base(study, of) * path(study, of).factor(year, study.money().time(category, year));
    }

    Derivation why(StudyInput study, int of, int year, CostCategory category) {
        double factor = path(study, of).factor(year, study.money().time(category, year));
        InputRef input = source.of(study, of);
        String moved = path(study, of).yearsBefore() > 0 ? "price in constant money over the one that the study states"
                : "price over that of the base date, constant money";
        if (input == null) {
            return moved(study, of, label + ": " + moved, factor, unit);
        }
        return Derivation.product(label + " in the year", unit,
                Derivation.input(label, base(study, of), unit, input), moved(study, of, moved, factor, ""));
    }

    private Derivation moved(StudyInput study, int of, String name, double factor, String factorUnit) {
        InputRef rises = path.input().of(study, of);
        PricePath along = path(study, of);
        boolean earlier = along.yearsBefore() > 0;
        List<Derivation> parts = new ArrayList<>();
        if (earlier) {
            parts.add(Derivation.of("general inflation to the base date", along.level(), "",
                    "money of the base date over money of the year in which prices are stated"));
        }
        if (rises == null || !along.points().isEmpty()) {
            return new Derivation(name, factor, factorUnit, along.points().isEmpty() ? "keeps its worth" : "points of the price by year",
                    parts, Optional.empty());
        }
        parts.add(Derivation.input("yearly rise above general inflation", along.realRise(), "share", rises));
        return new Derivation(name, factor, factorUnit, earlier
                ? "(1 + rise) to the years since prices were stated, times general inflation to the base date"
                : "(1 + rise) to the years since the base date", parts, Optional.empty());
    }
}
