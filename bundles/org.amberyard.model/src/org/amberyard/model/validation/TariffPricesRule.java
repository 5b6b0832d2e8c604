package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Season;
import org.amberyard.model.study.Study;

/** Rows that make one charge agree on its price in every month and year of service and on its ratchet; its blocks begin at nothing. */
final class TariffPricesRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Tariffs.byHours(study).forEach(tariff -> charges(tariff).values().forEach(rows -> check(rows, findings)));
    }

    private record Charge(TariffChargeKind kind, String name) {
    }

    /** Where a block starts. */
    private record BlockStart(double kwh, double hoursOfUse) implements Comparable<BlockStart> {
        static final BlockStart NOTHING = new BlockStart(0, 0);

        static BlockStart of(TariffCharge row) {
            return new BlockStart(row.getFromKwh(), row.getFromHoursOfUse());
        }

        @Override
        public int compareTo(BlockStart other) {
            return Comparator.comparingDouble(BlockStart::kwh).thenComparingDouble(BlockStart::hoursOfUse).compare(this, other);
        }
    }

    private record When(Object months, Object days, int fromMin, int toMin, int firstYear, int lastYear) {
        static When of(TariffCharge row) {
            return new When(Season.of(row), row.getDays(), row.getFromMin(), row.getToMin(), row.getFirstContractYear(),
                    row.getLastContractYear());
        }
    }

    private static Map<Charge, List<TariffCharge>> charges(ScheduledTariff tariff) {
        Map<Charge, List<TariffCharge>> charges = new LinkedHashMap<>();
        tariff.getCharges().forEach(r -> charges.computeIfAbsent(new Charge(r.getKind(), r.getCharge()), c -> new ArrayList<>())
                .add(r));
        return charges;
    }

    private static void check(List<TariffCharge> rows, Findings findings) {
        Map<When, TreeMap<BlockStart, Double>> blocks = new LinkedHashMap<>();
        Map<When, TariffCharge> first = new LinkedHashMap<>();
        for (TariffCharge row : rows) {
            When when = When.of(row);
            first.putIfAbsent(when, row);
            Double before = blocks.computeIfAbsent(when, w -> new TreeMap<>()).putIfAbsent(BlockStart.of(row), price(row));
            if (before != null) {
                findings.error(row, Literals.TARIFF_CHARGE__CHARGE, "the row stands there twice; delete one.");
            }
        }
        blocks.forEach((when, prices) -> checkBlocks(first.get(when), prices, findings));
        checkAgreement(List.copyOf(first.values()), blocks, findings);
        rows.stream().filter(r -> r.getKind() == TariffChargeKind.DEMAND && !ratchet(r).equals(ratchet(rows.get(0)))).findFirst().ifPresent(
                r -> findings.error(r, Literals.TARIFF_CHARGE__RATCHET_SHARE, "its ratchet differs from that of "
                        + ElementNames.of(rows.get(0)) + ", but a charge has one; give all its rows the same share and months."));
    }

    /** Share of earlier demands and months looked back; the months are nothing without a share. */
    private static List<Double> ratchet(TariffCharge row) {
        return row.getRatchetShare() > 0 ? List.of(row.getRatchetShare(), (double) row.getRatchetMonths()) : List.of();
    }

    private static double price(TariffCharge row) {
        return row.getKind() == TariffChargeKind.DEMAND ? row.getPricePerKw() : row.getPricePerKwh();
    }

    private static void checkBlocks(TariffCharge row, TreeMap<BlockStart, Double> prices, Findings findings) {
        if (!prices.firstKey().equals(BlockStart.NOTHING)) {
            findings.error(row, Literals.TARIFF_CHARGE__FROM_KWH,
                    "its lowest block does not start at 0; add the row of the energy below.");
        }
        for (BlockStart start : prices.keySet()) {
            BlockStart before = prices.lowerKey(start);
            if (before != null && start.hoursOfUse() < before.hoursOfUse()) {
                findings.error(row, Literals.TARIFF_CHARGE__FROM_HOURS_OF_USE,
                        "a block starts at more energy but at fewer hours of use than another, so that they may change places; "
                                + "correct one.");
            }
        }
    }

    private static void checkAgreement(List<TariffCharge> rows, Map<When, TreeMap<BlockStart, Double>> blocks, Findings findings) {
        for (int i = 1; i < rows.size(); i++) {
            TariffCharge row = rows.get(i);
            rows.subList(0, i).stream()
                    .filter(r -> meet(r, row) && !blocks.get(When.of(r)).equals(blocks.get(When.of(row)))).findFirst()
                    .ifPresent(r -> findings.error(row, Literals.TARIFF_CHARGE__CHARGE, "its price differs from that of "
                            + ElementNames.of(r) + "; give charges of different prices different names."));
        }
    }

    /** True for rows that both stand on some bill. */
    private static boolean meet(TariffCharge a, TariffCharge b) {
        return a.getFirstContractYear() <= b.getLastContractYear() && b.getFirstContractYear() <= a.getLastContractYear()
                && Season.of(a).stream().anyMatch(Season.of(b)::contains);
    }
}
