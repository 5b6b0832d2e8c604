package org.amberyard.core.tariff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.tariff.TariffPeriod.Hours;
import org.junit.jupiter.api.Test;

/** Bills of periods that are no calendar months, worked by hand; loads and prices are invented. */
class PeriodBillTest {
    private static final Set<Integer> SUMMER = Set.of(5, 6, 7, 8);
    private static final Set<Integer> WINTER = Set.of(0, 1, 2, 3, 4, 9, 10, 11);

    private static BillingPeriod period(String first, String last) {
        return new BillingPeriod(LocalDate.parse(first), LocalDate.parse(last));
    }

    private static List<MeteredDay> days(String first, String last, double kw) {
        return period(first, last).dates().stream().map(d -> new MeteredDay(d, Loads.flat(kw))).toList();
    }

    private static ChargeRate in(Set<Integer> months, double price) {
        return ChargeRate.of(new TariffPeriod(months, EnumSet.allOf(DayClass.class), List.of(Hours.ALL_DAY)), price);
    }

    private static Tariff seasons() {
        return new Tariff("Seasons", List.of(FixedCharge.monthly("Customer", 20)), MinimumBill.NONE,
                List.of(new EnergyCharge("Energy", List.of(in(WINTER, 0.10), in(SUMMER, 0.20)))),
                List.of(new DemandCharge("Demand", List.of(in(WINTER, 4), in(SUMMER, 8)), 0, Optional.empty())), Riders.NONE, List.of(), 1);
    }

    private static List<String> lines(Bill bill) {
        return bill.lines().stream().map(l -> String.format("%s %.2f", l.label(), l.amount())).toList();
    }

    private static Bill bill(Tariff tariff, BillingPeriod period, List<MeteredDay> days) {
        return new PeriodBill(tariff, ContractStart.longAgo(1), List.of(), new DatedLoad(days)).printed(period);
    }

    /** 31 days over the new year at 10 kW: 7,440 kWh at 0.10, 10 kW at 4, one month of 20. */
    @Test
    void aPeriodOfOneSeasonIsBilledAsAMonth() {
        Bill bill = bill(seasons(), period("2025-12-09", "2026-01-08"), days("2025-12-01", "2026-01-31", 10));
        assertEquals(List.of("Customer 20.00", "Energy 744.00", "Demand 40.00"), lines(bill));
        assertEquals(11, bill.month());
    }

    /**
     * 15 days of May at 10 kW, 15 of June at 20 kW: 3,600 kWh at 0.10 and 7,200 at 0.20; half a month of 4 for 10 kW and of 8 for 20 kW; the
     * customer charge in halves.
     */
    @Test
    void aChangeOfSeasonsPartsThePeriod() {
        List<MeteredDay> days = new ArrayList<>(days("2026-05-17", "2026-05-31", 10));
        days.addAll(days("2026-06-01", "2026-06-15", 20));
        Bill bill = bill(seasons(), period("2026-05-17", "2026-06-15"), days);
        assertEquals(List.of("Customer, 2026-05-17 to 2026-05-31 10.00", "Energy, 2026-05-17 to 2026-05-31 360.00",
                "Demand, 2026-05-17 to 2026-05-31 20.00", "Customer, 2026-06-01 to 2026-06-15 10.00",
                "Energy, 2026-06-01 to 2026-06-15 1440.00", "Demand, 2026-06-01 to 2026-06-15 80.00"), lines(bill));
        assertEquals(1920, bill.total(), 1e-9);
    }

    /** Twelve days are 0.4 of a month: 8 of 20, 0.4 × 4 for 10 kW; blocks from 1,000 kWh begin at 400. 2,880 kWh: 400 × 0.10 + 2,480 × 0.05. */
    @Test
    void aShortPeriodIsChargedByDays() {
        Tariff blocks = new Tariff("Blocks", List.of(FixedCharge.monthly("Customer", 20)), MinimumBill.ofCharges(500), List.of(new EnergyCharge("Energy",
                List.of(new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL,
                        new BlockPrices(List.of(new PriceBlock(0, 0.10), new PriceBlock(1000, 0.05))))))),
                List.of(DemandCharge.of("Demand", TariffPeriod.ALWAYS, 4)), Riders.NONE, List.of(), 1);
        Bill bill = bill(blocks, period("2026-03-03", "2026-03-14"), days("2026-03-03", "2026-03-14", 10));
        assertEquals(List.of(8.0, 40.0, 124.0, 16.0, 12.0), bill.lines().stream().map(BillLine::amount).toList());
        assertEquals(200, bill.total(), 1e-9);
    }

    @Test
    void monthsAreCountedAsMetersAreRead() {
        assertEquals(1, period("2026-01-01", "2026-01-25").months(), 0);
        assertEquals(1, period("2026-01-01", "2026-02-04").months(), 0);
        assertEquals(0.8, period("2026-01-01", "2026-01-24").months(), 1e-12);
        assertEquals(1.2, period("2026-01-01", "2026-02-05").months(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> period("2026-01-02", "2026-01-01"));
    }

    /** A day of 100 kW four periods before: 80 % of it is billed where 10 kW were drawn; ten of the eleven earlier periods are not known whole. */
    @Test
    void aRatchetLooksBackAtThePeriodsBefore() {
        Tariff ratchet = new Tariff("Ratchet", List.of(), MinimumBill.NONE, List.of(),
                List.of(new DemandCharge("Demand", List.of(ChargeRate.of(TariffPeriod.ALWAYS, 5)), 0, Optional.of(Ratchet.anyTime(0.8, 11)))), Riders.NONE,
                List.of(), 1);
        List<MeteredDay> days = new ArrayList<>(days("2026-04-08", "2026-06-07", 10));
        days.add(new MeteredDay(LocalDate.parse("2026-01-20"), Loads.flat(100)));
        PeriodBill bills = new PeriodBill(ratchet, ContractStart.longAgo(1), List.of(), new DatedLoad(days));
        BillingPeriod may = period("2026-05-08", "2026-06-07");
        assertEquals(400, bills.printed(may).total(), 1e-9);
        assertEquals("80 % of 100.0 kW at 00:00 on 2026-01-20, January",
                bills.printed(may).lines().get(0).demand().orElseThrow().explanation());
        assertEquals(10, bills.unknownBefore(may).size());
        assertEquals(List.of(), new PeriodBill(seasons(), ContractStart.longAgo(1), List.of(), new DatedLoad(days)).unknownBefore(may));
    }

    /** The fourth of July 2025, a Friday, is a holiday: no weekday's price. 30 weekdays and others; by hand 22 weekdays in the month. */
    @Test
    void everyDayHasItsOwnKind() {
        Tariff weekdays = new Tariff("Weekdays", List.of(), MinimumBill.NONE, List.of(EnergyCharge.of("Weekdays",
                new TariffPeriod(TariffPeriod.ALWAYS.months(), Set.of(DayClass.WEEKDAY), List.of(Hours.ALL_DAY)), 1)), List.of(), Riders.NONE, List.of(), 1);
        Bill bill = new PeriodBill(weekdays, ContractStart.longAgo(1), HolidayRule.USUAL_IN_US, new DatedLoad(days("2025-07-01", "2025-07-31", 1)))
                .printed(period("2025-07-01", "2025-07-31"));
        assertEquals(22 * 24, bill.total(), 1e-9);
    }

    /** Of 1 kW and then 2 kW of the same day the first counts. */
    @Test
    void aDayThatStandsTwiceCountsOnceAndMissingOnesAreNamed() {
        DatedLoad twice = new DatedLoad(List.of(days("2026-01-01", "2026-01-01", 1).get(0), days("2026-01-01", "2026-01-01", 2).get(0)));
        assertEquals(24, twice.metered(period("2026-01-01", "2026-01-01"), 0, List.of()).kwh(), 1e-12);
        assertEquals(List.of(LocalDate.parse("2026-01-03")), new DatedLoad(days("2026-01-01", "2026-01-02", 1)).missing(period("2026-01-01", "2026-01-03")));
    }

    /** 59 days are 59/30 of a month: 10 kW for 1.9667 months at 5 are 98.33, and the line says 5. */
    @Test
    void aDemandForMoreThanAMonthKeepsItsPrice() {
        Tariff tariff = new Tariff("Two months", List.of(), MinimumBill.NONE, List.of(), List.of(DemandCharge.of("Demand", TariffPeriod.ALWAYS, 5)),
                Riders.NONE, List.of(), 1);
        BillLine demand = bill(tariff, period("2026-01-01", "2026-02-28"), days("2026-01-01", "2026-02-28", 10)).lines().get(0);
        assertEquals(5, demand.price(), 0);
        assertEquals(590.0 / 30, demand.quantity(), 1e-12);
        assertEquals(BillUnit.KW_MONTH, demand.unit());
        assertEquals(98.33, demand.amount(), 1e-12);
    }

    private static ChargeRate from(int year, int to, double price) {
        return new ChargeRate(TariffPeriod.ALWAYS, new ContractYears(year, to), BlockPrices.flat(price));
    }

    /** Ten days of December at 0.10 and twenty of January at 0.20, 240 kWh a day; the customer charge of the first year is not asked in the second. */
    @Test
    void aStepOfPricesAtTheNewYearPartsThePeriod() {
        Tariff steps = new Tariff("Steps", List.of(new FixedCharge("Start", 30, BillUnit.MONTH, new ContractYears(1, 1))), MinimumBill.NONE,
                List.of(new EnergyCharge("Energy", List.of(from(1, 1, 0.10), from(2, Integer.MAX_VALUE, 0.20)))), List.of(), Riders.NONE, List.of(), 1);
        PeriodBill bills = new PeriodBill(steps, new ContractStart(2025, steps.settledYear()), List.of(),
                new DatedLoad(days("2025-12-22", "2026-01-20", 10)));
        assertEquals(List.of("Start, 2025-12-22 to 2025-12-31 10.00", "Energy, 2025-12-22 to 2025-12-31 240.00",
                "Energy, 2026-01-01 to 2026-01-20 960.00"), lines(bills.printed(period("2025-12-22", "2026-01-20"))));
    }

    @Test
    void yearsOfAContractAreCalendarYears() {
        ContractStart start = new ContractStart(2024, 3);
        assertEquals(List.of(1, 1, 2, 3, 3), List.of("2023-12-31", "2024-05-01", "2025-01-01", "2026-01-01", "2029-01-01").stream()
                .map(d -> start.contractYear(LocalDate.parse(d))).toList());
        assertEquals(3, ContractStart.longAgo(3).contractYear(LocalDate.parse("2024-01-01")));
    }

    private static Tariff winterRatchet(Set<Integer> counted) {
        return new Tariff("Ratchet of seasons", List.of(), MinimumBill.NONE, List.of(),
                List.of(new DemandCharge("Demand", List.of(in(WINTER, 4), in(SUMMER, 8)), 0, Optional.of(new Ratchet(1, 11,
                        List.of(new TariffPeriod(counted, EnumSet.allOf(DayClass.class), List.of(Hours.ALL_DAY))))))),
                Riders.NONE, List.of(), 1);
    }

    /** 100 kW on 20 April, in the period that goes by the name of May; the ratchet counts April only, so neither part of the bill has it. */
    @Test
    void aDayBeforeGoesByOneMonthInAllPartsOfABill() {
        List<MeteredDay> days = new ArrayList<>(days("2026-05-17", "2026-06-15", 10));
        days.add(new MeteredDay(LocalDate.parse("2026-04-20"), Loads.flat(100)));
        BillingPeriod period = period("2026-05-17", "2026-06-15");
        assertEquals(List.of("Demand, 2026-05-17 to 2026-05-31 20.00", "Demand, 2026-06-01 to 2026-06-15 40.00"),
                lines(bill(winterRatchet(Set.of(3)), period, days)));
        assertEquals(List.of("Demand, 2026-05-17 to 2026-05-31 200.00", "Demand, 2026-06-01 to 2026-06-15 400.00"),
                lines(bill(winterRatchet(Set.of(4)), period, days)));
    }

    /** 50 kW in the part of May, 10 kW in that of June, which its ratchet lifts to 50; also where the period begins early in its month. */
    @Test
    void aRatchetSeesThePeakOfThePartBefore() {
        List<MeteredDay> days = new ArrayList<>(days("2026-05-01", "2026-05-31", 50));
        days.addAll(days("2026-06-01", "2026-06-30", 10));
        assertEquals(List.of("Demand, 2026-05-17 to 2026-05-31 100.00", "Demand, 2026-06-01 to 2026-06-15 200.00"),
                lines(bill(winterRatchet(Set.of(4)), period("2026-05-17", "2026-06-15"), days)));
        assertEquals(List.of("Demand, 2026-05-07 to 2026-05-31 166.67", "Demand, 2026-06-01 to 2026-06-05 66.67"),
                lines(bill(winterRatchet(Set.of(4)), period("2026-05-07", "2026-06-05"), days)));
    }

    /** Periods that begin on any day go by twelve months that follow one another. */
    @Test
    void periodsBeforeGoByMonthsThatFollowOneAnother() {
        for (LocalDate first : period("2025-01-01", "2025-12-31").dates()) {
            PeriodBill bills = new PeriodBill(winterRatchet(Set.of(4)), ContractStart.longAgo(1), List.of(), new DatedLoad(List.of()));
            assertEquals(0, bills.printed(new BillingPeriod(first, first.plusDays(29))).total(), 0);
        }
    }
}
