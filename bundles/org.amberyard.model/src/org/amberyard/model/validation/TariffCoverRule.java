package org.amberyard.model.validation;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.meta.ClockTime;
import org.amberyard.model.meta.Season;
import org.amberyard.model.meta.TariffDay;
import org.amberyard.model.study.Study;

/** The energy charges of a tariff price each hour once; else no bill can be made of it. */
final class TariffCoverRule implements Rule {
    private static final int MOST_LISTED = 6;
    private static final int DAY_MIN = 1440;

    @Override
    public void check(Study study, Findings findings) {
        Tariffs.byHours(study).forEach(tariff -> check(tariff, findings));
    }

    /** The first year of service with a fault tells enough. */
    private static void check(ScheduledTariff tariff, Findings findings) {
        for (int year : years(tariff)) {
            TariffCover cover = new TariffCover(tariff, year);
            List<TariffCover.Place> places = cover.places();
            if (!places.isEmpty()) {
                String faults = places.stream().limit(MOST_LISTED).map(p -> words(p, cover)).collect(Collectors.joining("; "));
                String more = places.size() > MOST_LISTED ? "; and " + (places.size() - MOST_LISTED) + " more" : "";
                findings.error(tariff, Literals.SCHEDULED_TARIFF__CHARGES, (year > 1 ? "from year " + year + " of service on, " : "")
                        + faults + more + "; energy charges must price each hour just once.");
                return;
            }
        }
    }

    /** Years of service in which the energy charges may be others than in the year before. */
    private static SortedSet<Integer> years(ScheduledTariff tariff) {
        SortedSet<Integer> years = new TreeSet<>(List.of(1));
        int end = (int) Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR.getDefaultValue();
        tariff.getCharges().stream().filter(r -> r.getKind() == TariffChargeKind.ENERGY)
                .forEach(r -> years.addAll(List.of(r.getFirstContractYear(), r.getLastContractYear() + 1)));
        return years.headSet(end + 1).tailSet(1);
    }

    private static String words(TariffCover.Place place, TariffCover cover) {
        TariffCover.Fault fault = place.fault();
        String hours = fault.isWholeDay() ? "" : " " + ClockTime.text(fault.fromMin()) + " to "
                + ClockTime.text(fault.toMin() % DAY_MIN);
        String when = TariffDay.words(place.days(), cover.days()) + hours + Season.words(place.months());
        return when + (fault.charges().isEmpty() ? " without energy price"
                : " priced " + (fault.charges().size() == 2 ? "twice" : fault.charges().size() + " times") + ", by "
                        + String.join(" and ", fault.charges()));
    }
}
