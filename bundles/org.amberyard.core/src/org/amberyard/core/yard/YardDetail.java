package org.amberyard.core.yard;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.amberyard.core.tariff.BillYear;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.PeakMoment;

/**
 * A yard's year with its loads by step, which {@link YardYear} does not keep: for bills as printed, for what set a demand, and
 * for who charges when.
 *
 * @param year the year
 * @param loads loads of its months, from January to December
 */
public record YardDetail(YardYear year, List<MonthLoad> loads) {

    public YardDetail {
        loads = List.copyOf(loads);
    }

    /**
     * The loads of a year, planned again.
     *
     * @param memory years of the same yard under other policies, as far as they are known
     */
    public static YardDetail of(YardYear year, YardMemory memory) {
        return new YardDetail(year, new YardPlanner(year.input(), memory).year());
    }

    /** A year planned and billed. */
    public static YardDetail of(YardInput input) {
        List<MonthLoad> loads = new YardPlanner(input).year();
        return new YardDetail(YardYear.of(input, loads), loads);
    }

    /** Bills of the meter as printed. */
    public BillYear printed() {
        return printed(metered());
    }

    /** What the meter of charging counts, from January to December. */
    public List<MeterMonth> metered() {
        return loads.stream().map(m -> m.metered(metering().shared())).toList();
    }

    /** Bills of the meter as printed if nothing were charged, where it is shared with the building. */
    public Optional<BillYear> printedWithoutCharging() {
        return metering().shared() ? Optional.of(printed(loads.stream().map(MonthLoad::buildingOnly).toList()))
                : Optional.empty();
    }

    private BillYear printed(List<MeterMonth> months) {
        return BillYear.printedSteady(metering().tariff(), year.input().contractYear(), months);
    }

    private Metering metering() {
        return year.input().metering();
    }

    /** What made up the demand at a moment that a bill names. */
    public PeakLoad at(PeakMoment moment) {
        return PeakLoad.of(year.input(), loads.get(moment.month()), moment);
    }

    /** The month with the highest demand of charging, heat and standby; the first of equals. */
    public MonthLoad peakMonth() {
        return loads.stream().max(Comparator.comparingDouble((MonthLoad month) -> month.yardPeakKw()).thenComparing(m -> -m.month())).orElseThrow();
    }

    /**
     * Stretches of the peak month of which somebody should see the load: those of some kinds, then those that hold
     * the highest
     * demand of charging and the highest behind the service where these are others.
     */
    public List<StretchLoad> peakStretches(StretchKind... kinds) {
        MonthLoad month = peakMonth();
        Stream<StretchLoad> ofKinds = Stream.of(kinds).flatMap(kind -> stretches(month, kind).stream());
        return Stream.concat(ofKinds, Stream.of(highest(month, StretchLoad::yardKw), highest(month,
                StretchLoad::serviceKw))
                .flatMap(Optional::stream)).distinct().toList();
    }

    private static Optional<StretchLoad> highest(MonthLoad month, Function<StretchLoad, double[]> load) {
        return month.stretches().stream()
                .max(Comparator.comparingDouble((StretchLoad s) -> MonthLoad.highest(load.apply(s)))
                        .thenComparing(s -> -month.stretches().indexOf(s)));
    }

    /** Stretches of a kind in a month: one, or two where school and the extended-year programme meet. */
    public static List<StretchLoad> stretches(MonthLoad month, StretchKind kind) {
        return month.stretches().stream().filter(s -> s.kind() == kind).toList();
    }
}
