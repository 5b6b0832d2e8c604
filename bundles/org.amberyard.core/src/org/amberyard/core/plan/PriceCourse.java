package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.money.CostCategory;

/** A price over the years of a study, constant money of the base date. */
public final class PriceCourse {
    private final StudyInput study;
    private final PriceField field;

    private PriceCourse(StudyInput study, PriceField field) {
        this.study = study;
        this.field = field;
    }

    /** The courses on which some fields of a study have a bearing, in their order; a price and its rise have one. */
    public static List<PriceCourse> of(StudyInput study, List<PriceField> fields) {
        return fields.stream().map(PriceCourse::leading).distinct().map(f -> new PriceCourse(study, f)).toList();
    }

    /** The price that a rise belongs to; the rise of an index has none. */
    private static PriceField leading(PriceField field) {
        return switch (field.kind()) {
            case FUEL_RISE -> new PriceField(PriceField.Kind.FUEL_PRICE, field.of());
            case FLUID_RISE -> new PriceField(PriceField.Kind.FLUID_PRICE, field.of());
            case PACK_RISE -> new PriceField(PriceField.Kind.PACK_PRICE, field.of());
            default -> field;
        };
    }

    private PriceKind kind() {
        return switch (field.kind()) {
            case FUEL_PRICE, FUEL_RISE -> PriceKind.FUEL;
            case FLUID_PRICE, FLUID_RISE -> PriceKind.EXHAUST_FLUID;
            case PACK_PRICE, PACK_RISE -> PriceKind.NEW_PACK;
            case INDEX_RISE -> throw new IllegalStateException("An index is no price");
            case BUS_PRICE -> PriceKind.NEW_BUS;
            case BUS_END_VALUE -> PriceKind.BUS_AT_RETIREMENT;
            case REGISTRATION -> PriceKind.REGISTRATION;
            case PACK_RESALE -> PriceKind.OLD_PACK;
            case PACK_LABOUR -> PriceKind.PACK_LABOUR;
            case PORT_HARDWARE -> PriceKind.PORT_HARDWARE;
            case PORT_INSTALLATION -> PriceKind.PORT_INSTALLATION;
            case PORT_FEE -> PriceKind.PORT_FEE;
            case SITE_WORK -> PriceKind.SITE_WORK;
            case SWAP_COST -> PriceKind.PLUG_SWAP;
        };
    }

    private boolean ofIndex() {
        return field.kind() == PriceField.Kind.INDEX_RISE;
    }

    private boolean ofEarlierDate() {
        return study.prices().path(subject()).yearsBefore() > 0;
    }

    private PriceDeck.Subject subject() {
        return PriceDeck.Subject.values()[field.of()];
    }

    /** What has the price, as in “price of fuel, diesel”, or what an index scales, as in “electric energy”. */
    public String name() {
        return ofIndex() ? subject().label() : kind().name(study, field.of());
    }

    /** Unit of the price with the study's currency; of an index its level, 1 at the base date or for prices as stated before it. */
    public String unit() {
        return ofIndex() ? ofEarlierDate() ? "price as stated = 1" : "base date = 1" : kind().unit().replace("money", study.currency());
    }

    /**
     * The price in each year, as it is for what is paid during the year.
     *
     * @param variant the study with its prices at other values
     */
    public double[] years(StudyInput variant) {
        double[] years = new double[variant.years()];
        for (int year = 0; year < years.length; year++) {
            years[year] = ofIndex() ? variant.prices().index(subject(), year, variant.money().time(CostCategory.FUEL, year))
                    : kind().at(variant, field.of(), year, CostCategory.FUEL);
        }
        return years;
    }

    /** The price in each year over several variants: by year and variant. */
    public double[][] years(List<StudyInput> variants) {
        double[][] byVariant = variants.stream().map(this::years).toArray(double[][]::new);
        return IntStream.range(0, study.years()).mapToObj(year -> Arrays.stream(byVariant).mapToDouble(v -> v[year]).toArray())
                .toArray(double[][]::new);
    }
}
