package org.amberyard.core.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/**
 * What has a price: an amount at the base date, which is an input or the money of the base date itself, and a path over the
 * years. The number beside the kind tells which fuel, vehicle type, port type or site work is meant.
 */
enum PriceKind {
    /** Money of the base date that keeps its worth. */
    MONEY("base-date money", "", (s, of) -> 1, flat(), none()),
    /** Money of the base date that moves as energy charges do. */
    ENERGY_CHARGES("energy charges", "", (s, of) -> 1, as(PriceDeck.Subject.ELECTRIC_ENERGY), none()),
    /** Money of the base date that moves as demand charges do. */
    DEMAND_CHARGES("demand charges", "", (s, of) -> 1, as(PriceDeck.Subject.ELECTRIC_DEMAND), none()),
    /** Money of the base date that moves as fixed charges do. */
    FIXED_CHARGES("fixed electric charges", "", (s, of) -> 1, as(PriceDeck.Subject.ELECTRIC_FIXED), none()),
    /** Money of the base date that moves as upkeep does. */
    UPKEEP("upkeep", "", (s, of) -> 1, as(PriceDeck.Subject.UPKEEP), none()),
    /** Money of the base date that moves as prices of new buses of a type do. */
    BUS_PRICES("prices of buses", "", (s, of) -> 1, buses(), none()),
    FUEL("price of fuel", "money/L", (s, of) -> fuel(s, of).base(), new Path((s, of) -> fuel(s, of).path(),
            (s, of) -> rise("FuelPrice", FuelKind.values()[of].name().toLowerCase(Locale.ROOT))),
            (s, of) -> ref("FuelPrice", FuelKind.values()[of].name().toLowerCase(Locale.ROOT), "pricePerL")),
    EXHAUST_FLUID("price of exhaust fluid", "money/L", (s, of) -> s.prices().exhaustFluid().base(),
            new Path((s, of) -> s.prices().exhaustFluid().path(), (s, of) -> rise("FluidPrice", "")), (s, of) -> ref("FluidPrice", "", "pricePerL")),
    NEW_PACK("price of a new pack", "money/kWh", (s, of) -> s.prices().pack().base(), packs(),
            (s, of) -> ref("PackPrice", "", "pricePerKwh")),
    OLD_PACK("price of an old pack", "money/kWh", (s, of) -> s.types().get(of).prices().packs().resalePerKwh(),
            packs(), (s, of) -> ofType(s, of, "packResalePerKwh")),
    PACK_LABOUR("work to change a pack", "money", (s, of) -> s.types().get(of).prices().packs().labour(),
            as(PriceDeck.Subject.UPKEEP), (s, of) -> ofType(s, of, "replacementLabour")),
    NEW_BUS("price of a new bus", "money", (s, of) -> s.types().get(of).prices().purchase(), buses(),
            (s, of) -> ofType(s, of, "purchasePrice")),
    BUS_AT_RETIREMENT("value of a bus at retirement age", "money", (s, of) -> s.types().get(of).prices().endValue(),
            buses(), (s, of) -> ofType(s, of, "valueAtRetirement")),
    REGISTRATION("registration and fees of a bus", "money", (s, of) -> s.types().get(of).prices().registrationPerYear(),
            as(PriceDeck.Subject.UPKEEP), (s, of) -> ofType(s, of, "registrationPerYear")),
    PORT_HARDWARE("price of a port", "money", (s, of) -> s.depot().ports().get(of).hardwarePrice(),
            as(PriceDeck.Subject.INFRASTRUCTURE), (s, of) -> ofPort(s, of, "hardwarePrice")),
    PORT_INSTALLATION("price to install a port", "money", (s, of) -> s.depot().ports().get(of).installationPrice(),
            as(PriceDeck.Subject.INFRASTRUCTURE), (s, of) -> ofPort(s, of, "installationPrice")),
    PORT_FEE("network fee of a port", "money", (s, of) -> s.depot().ports().get(of).feePerYear(),
            as(PriceDeck.Subject.UPKEEP), (s, of) -> ofPort(s, of, "feePerYear")),
    SITE_WORK("price of a site work", "money", (s, of) -> s.depot().works().get(of).price(),
            as(PriceDeck.Subject.INFRASTRUCTURE), (s, of) -> ref("SiteWork", s.depot().works().get(of).name(), "price")),
    PLUG_SWAP("cost to move a plug", "money", (s, of) -> s.depot().charging().swapCost(), as(PriceDeck.Subject.UPKEEP),
            (s, of) -> ref("Depot", "", "swapCost"));

    private interface Base {
        double of(StudyInput study, int of);
    }

    private interface PathOf {
        PricePath of(StudyInput study, int of);
    }

    /** A path, and the input that says how it rises where there is one. */
    private record Path(PathOf path, Source rise) {
    }

    private interface Source {
        InputRef of(StudyInput study, int of);
    }

    private final String label;
    private final String unit;
    private final Base base;
    private final Path path;
    private final Source source;

    PriceKind(String label, String unit, Base base, Path path, Source source) {
        this.label = label;
        this.unit = unit;
        this.base = base;
        this.path = path;
        this.source = source;
    }

    private static Path flat() {
        return new Path((study, of) -> PricePath.FLAT, none());
    }

    private static Path as(PriceDeck.Subject subject) {
        return new Path((study, of) -> study.prices().path(subject), (study, of) -> risesAs(subject));
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

    private static PriceDeck.Price fuel(StudyInput study, int fuel) {
        return study.prices().fuels().get(FuelKind.values()[fuel]);
    }

    private static Path packs() {
        return new Path((s, of) -> s.prices().pack().path(), (s, of) -> rise("PackPrice", ""));
    }

    private static Path buses() {
        return new Path((s, of) -> s.prices().path(busSubject(s, of)), (s, of) -> risesAs(busSubject(s, of)));
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

    /** What has the price, with the name of the element where it belongs to one. */
    String name(StudyInput study, int of) {
        InputRef named = source.of(study, of) == null ? path.rise().of(study, of) : source.of(study, of);
        return named == null || named.element().isEmpty() ? label : label + ", " + named.element();
    }

    /** Unit of the price; empty for money of the base date. */
    String unit() {
        return unit;
    }

    /** Price at the base date. */
    double base(StudyInput study, int of) {
        return base.of(study, of);
    }

    /** Its path over the years. */
    PricePath path(StudyInput study, int of) {
        return path.path().of(study, of);
    }

    /** Price in a year at the time of a category, constant money. */
    double at(StudyInput study, int of, int year, CostCategory category) {
        return base.of(study, of) * path.path().of(study, of).factor(year, study.money().time(category, year));
    }

    Derivation why(StudyInput study, int of, int year, CostCategory category) {
        double factor = path.path().of(study, of).factor(year, study.money().time(category, year));
        InputRef input = source.of(study, of);
        String moved = "price over that of the base date, constant money";
        if (input == null) {
            return moved(study, of, label + ": " + moved, factor, unit);
        }
        return Derivation.product(label + " in the year", unit,
                Derivation.input(label, base.of(study, of), unit, input), moved(study, of, moved, factor, ""));
    }

    private Derivation moved(StudyInput study, int of, String name, double factor, String factorUnit) {
        InputRef rise = path.rise().of(study, of);
        PricePath along = path.path().of(study, of);
        if (rise == null || !along.points().isEmpty()) {
            return new Derivation(name, factor, factorUnit, along.points().isEmpty() ? "keeps its worth" : "points of the price by year",
                    List.of(), Optional.empty());
        }
        return Derivation.of(name, factor, factorUnit, "(1 + rise) to the years since the base date",
                Derivation.input("yearly rise above general inflation", along.realRise(), "share", rise));
    }
}
