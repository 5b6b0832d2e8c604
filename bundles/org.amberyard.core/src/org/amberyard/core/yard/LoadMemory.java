package org.amberyard.core.yard;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.duty.Climate;

/**
 * What yards draw before prices schedule anything, with what their buses need. It follows from neither tariff nor year of the
 * contract, so years and plans with the same buses at the same ports share it, and an edit of a tariff does not work it out
 * again. Older answers are forgotten when there are too many. Safe for use from several threads; what it gives depends on the
 * question alone.
 */
final class LoadMemory {
    /** Figures of loads by step that are kept at least: some sixty megabytes. */
    private static final long MOST_FIGURES = 8_000_000;
    /** Months without loads by bus that are kept at least: some forty megabytes. */
    private static final long MOST_MONTHS = 4_096;

    private final NeedsMemory needs;
    private final RecentAnswers<Key, List<MonthLoad>> years = new RecentAnswers<>(MOST_FIGURES, LoadMemory::figures);
    private final RecentAnswers<MonthKey, ChargedMonth> months = new RecentAnswers<>(MOST_MONTHS, month -> 1);

    /** All that loads follow from. */
    private record Key(List<YardBus> buses, List<PortUnit> ports, ChargeRule rule, boolean midday, double reserveShare,
            boolean shared, BuildingLoad building, YardCalendar calendar, int stepMin, SwapTimes swaps) {
        static Key of(YardInput yard) {
            return new Key(yard.buses(), yard.ports(), yard.rule(), yard.midday(), yard.reserveShare(), yard.metering().shared(),
                    yard.building(), yard.calendar(), yard.stepMin(), yard.swaps());
        }

        /** Of what is quick to look at, as that of the yard. */
        @Override
        public int hashCode() {
            return Objects.hash(buses, ports, rule);
        }
    }

    /**
     * A month of a yard.
     *
     * @param yardHash hash of the yard, worked out once for all months
     */
    private record MonthKey(Key yard, int yardHash, int month) {
        @Override
        public int hashCode() {
            return 31 * yardHash + month;
        }
    }

    /** Nothing is known. */
    LoadMemory() {
        this(new NeedsMemory());
    }

    /** No loads are known, but needs. */
    LoadMemory(NeedsMemory needs) {
        this.needs = needs;
    }

    /** Loads by step of all months, from January to December. */
    List<MonthLoad> year(YardInput yard) {
        return years.to(Key.of(yard), () -> unscheduled(yard).year());
    }

    /** What each month comes to, from January to December. */
    List<ChargedMonth> months(YardInput yard) {
        Year year = new Year(yard);
        return IntStream.range(0, Climate.MONTHS).mapToObj(year::month).toList();
    }

    /** What a month comes to. */
    ChargedMonth month(YardInput yard, int month) {
        return new Year(yard).month(month);
    }

    /** A year of a yard that is asked for month by month. */
    private final class Year {
        private final YardInput yard;
        private final Key key;
        private final int hash;
        private final WorkedOnce<UnscheduledLoads> loads = new WorkedOnce<>();

        Year(YardInput yard) {
            this.yard = yard;
            this.key = Key.of(yard);
            this.hash = key.hashCode();
        }

        ChargedMonth month(int month) {
            return months.to(new MonthKey(key, hash, month), () -> ChargedMonth.of(loads.of(() -> unscheduled(yard)).month(month), yard));
        }
    }

    /** Loads that are worked out now, for whoever wants them once. */
    UnscheduledLoads unscheduled(YardInput yard) {
        return new UnscheduledLoads(yard, new YardNeeds(yard, needs));
    }

    private static long figures(List<MonthLoad> year) {
        return year.stream().flatMap(month -> month.stretches().stream()).mapToLong(stretch -> (long) stretch.schedule().grid().steps()
                * (stretch.schedule().meterKw().length + stretch.base().heat().size() + 3)).sum();
    }
}
