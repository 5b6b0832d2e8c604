package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.audit.AuditVerdict;
import org.amberyard.core.audit.BillAudit;
import org.amberyard.core.audit.BillRecord;
import org.amberyard.core.audit.BillRecords;
import org.amberyard.core.audit.PrintedBill;
import org.amberyard.core.audit.PrintedLine;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.BillYear;
import org.amberyard.core.tariff.BillingCalendar;
import org.amberyard.core.tariff.BillingPeriod;
import org.amberyard.core.tariff.ContractStart;
import org.amberyard.core.tariff.DatedLoad;
import org.amberyard.core.tariff.MeteredDay;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.FixedCharge;
import org.amberyard.core.tariff.HolidayRule;
import org.amberyard.core.tariff.LoadDay;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Observance;
import org.amberyard.core.tariff.PeakHistory;
import org.amberyard.core.tariff.PriceBlock;
import org.amberyard.core.tariff.Ratchet;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.ShareCharge;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffCheck;
import org.amberyard.core.tariff.TariffPeriod;
import org.amberyard.core.tariff.TariffPeriod.Hours;
import org.junit.jupiter.api.Test;

/** Bills of published tariffs. */
class TariffReferenceTest {
    private static final int JANUARY = 0;
    private static final int JULY = 6;
    private static final int OCTOBER = 9;
    private static final Set<DayClass> WEEKDAYS = Set.of(DayClass.WEEKDAY);
    private static final Set<DayClass> FREE_DAYS = EnumSet.complementOf(EnumSet.of(DayClass.WEEKDAY));
    private static final Set<Integer> YEAR = TariffPeriod.ALWAYS.months();
    private static final Set<Integer> SUMMER = Set.of(5, 6, 7, 8);
    private static final Set<Integer> REST =
            YEAR.stream().filter(m -> !SUMMER.contains(m)).collect(Collectors.toUnmodifiableSet());

    private static MeterMonth steady(int month, double kw, double kwh) {
        return new MeterMonth(month, List.of(new LoadDay("steady", DayClass.WEEKDAY, kwh / (24 * kw), new double[] {kw})));
    }

    private static List<Double> amounts(Bill bill) {
        return bill.lines().stream().map(BillLine::amount).map(a -> Math.round(100 * a) / 100.0).toList();
    }

    private static EnergyCharge blocks(String name, double... fromAndPrice) {
        return new EnergyCharge(name, List.of(new ChargeRate(TariffPeriod.ALWAYS, ContractYears.ALL, prices(fromAndPrice))));
    }

    private static BlockPrices prices(double... fromAndPrice) {
        return new BlockPrices(IntStream.range(0, fromAndPrice.length / 2)
                .mapToObj(b -> new PriceBlock(fromAndPrice[2 * b], fromAndPrice[2 * b + 1])).toList());
    }

    private static Tariff seymour(EnergyCharge energy) {
        return new Tariff("Residential", List.of(FixedCharge.monthly("Base customer charge", 7.50)), MinimumBill.NONE,
                List.of(energy), List.of(), Riders.onEnergy(EnergyCharge.of("Power cost", TariffPeriod.ALWAYS, 0.085)),
                List.of(ShareCharge.ofCharges("City sales tax", 0.01)), 1);
    }

    /**
     * City of Seymour, "Billing Calculation Examples" (cityofseymour.org, residential electricity, bill comparison; read as
     * stored, undated), winter rates, 1,200 kWh: $16.00, $22.05, $22.30 by blocks, power cost $102.00, customer charge $7.50,
     * tax $1.70, total $171.55.
     */
    @Test
    void seymourWinter() {
        Bill bill = Bill.printed(seymour(blocks("Energy", 0, 0.064, 250, 0.049, 700, 0.0446)), 1, steady(JANUARY, 2, 1200),
                PeakHistory.NONE);
        assertEquals(List.of(7.5, 16.0, 22.05, 22.3, 102.0, 1.7), amounts(bill));
        assertEquals(171.55, bill.total(), 1e-9);
    }

    /** The same bill as a printed one, held against the tariff: 1,200 kWh drawn evenly in the 31 days of January, line by line. */
    @Test
    void seymourWinterAudited() {
        BillingPeriod january = new BillingPeriod(LocalDate.of(2025, 1, 1), LocalDate.of(2025, 1, 31));
        double[] kw = new double[24];
        Arrays.fill(kw, 1200 / (31 * 24.0));
        DatedLoad load = new DatedLoad(january.dates().stream().map(d -> new MeteredDay(d, kw)).toList());
        PrintedBill printed = new PrintedBill("Winter", january, OptionalDouble.of(1200), OptionalDouble.empty(),
                List.of(new PrintedLine("Base customer charge", 7.50), new PrintedLine("Energy, first 250 kWh", 16),
                        new PrintedLine("Energy, next 450 kWh", 22.05), new PrintedLine("Energy, over 700 kWh", 22.30),
                        new PrintedLine("Power cost", 102), new PrintedLine("Sales tax", 1.70)),
                OptionalDouble.of(171.55));
        BillRecord record = new BillRecord(0, printed, seymour(blocks("Energy", 0, 0.064, 250, 0.049, 700, 0.0446)), List.of(), ContractStart.longAgo(1));
        BillAudit audit = new BillRecords(List.of(record), load).audits().get(0);
        assertEquals(AuditVerdict.AGREES, audit.verdict());
        assertEquals(0, audit.difference().orElseThrow(), 1e-9);
    }

    /** The same source, summer rates, 2,000 kWh; the third block, $26.125, is printed as $26.13. */
    @Test
    void seymourSummer() {
        Bill bill = Bill.printed(seymour(blocks("Energy", 0, 0.064, 250, 0.049, 700, 0.0475, 1250, 0.0446)), 1,
                steady(JULY, 3, 2000), PeakHistory.NONE);
        assertEquals(List.of(7.5, 16.0, 22.05, 26.13, 33.45, 170.0, 2.75), amounts(bill));
        assertEquals(277.88, bill.total(), 1e-9);
    }

    /**
     * "Calculation of a Monthly Bill", section 18.5.1 of an energy management handbook (as read at
     * civilengineeringhandbook.tk), Public Service Electric & Gas, commercial general service, June: 17,588 kWh and 30 kW bill
     * at $3.74 + $1,661.01 − $302.37 + $262.34 = $1,624.72. The text gives the demand charge as an amount only, so its price
     * per kW is that amount over 30 kW.
     */
    @Test
    void generalServiceWithDemandAndACredit() {
        Tariff tariff = new Tariff("General service", List.of(FixedCharge.monthly("Customer charge", 3.74)), MinimumBill.NONE,
                List.of(EnergyCharge.of("Energy", TariffPeriod.ALWAYS, 0.09444)),
                List.of(DemandCharge.of("Demand", TariffPeriod.ALWAYS, 262.34 / 30)),
                Riders.onEnergy(EnergyCharge.of("Energy cost adjustment", TariffPeriod.ALWAYS, -0.017192)), List.of(), 1);
        Bill bill = Bill.printed(tariff, 1, steady(5, 30, 17_588), PeakHistory.NONE);
        assertEquals(List.of(3.74, 1661.01, 262.34, -302.37), amounts(bill));
        assertEquals(1624.72, bill.total(), 1e-9);
    }

    /**
     * United Electric Cooperative, "General Service – Three Phase Rate (Less Than 500 kW)" (uec.coop): customer charge $54.50,
     * $5.39 per kW, 4.137 cents per kWh, minimum the customer charge. By hand for 180 kW and 42,000 kWh: 54.50 + 970.20 +
     * 1,737.54 = 2,762.24.
     */
    @Test
    void flatTariff() {
        Tariff tariff = Tariff.flat("Three phase", 54.50, 0.04137, 0, 5.39, 0);
        assertEquals(2762.24, Bill.printed(tariff, 1, steady(JANUARY, 180, 42_000), PeakHistory.NONE).total(), 1e-9);
    }

    private static ChargeRate rate(Set<Integer> months, Set<DayClass> days, double price, int... fromToHours) {
        List<Hours> hours = IntStream.range(0, fromToHours.length / 2)
                .mapToObj(h -> new Hours(60 * fromToHours[2 * h], 60 * fromToHours[2 * h + 1])).toList();
        return ChargeRate.of(new TariffPeriod(months, days, hours), price);
    }

    /**
     * Wisconsin Public Service, "EV program pricing", charger-only rate COEV-R (wisconsinpublicservice.com, read as stored,
     * undated): $20 a month; June–September / October–May 25.145 / 13.786 cents on-peak (noon to 8 p.m., Monday to Friday,
     * no holidays), 13.786 cents intermediate (8 a.m. to noon and 8 p.m. to midnight on all days, noon to 8 p.m. on weekends
     * and holidays), 6.223 cents off-peak (midnight to 8 a.m.).
     */
    private static Tariff chargerOnly() {
        return new Tariff("COEV-R", List.of(FixedCharge.monthly("Fixed service and administration", 20)), MinimumBill.NONE,
                List.of(new EnergyCharge("On-peak", List.of(rate(SUMMER, WEEKDAYS, 0.25145, 12, 20),
                        rate(REST, WEEKDAYS, 0.13786, 12, 20))),
                        new EnergyCharge("Intermediate-peak", List.of(rate(YEAR, WEEKDAYS, 0.13786, 8, 12, 20, 24),
                                rate(YEAR, FREE_DAYS, 0.13786, 8, 24))),
                        new EnergyCharge("Off-peak", List.of(rate(YEAR, EnumSet.allOf(DayClass.class), 0.06223, 0, 8)))),
                List.of(), Riders.NONE, List.of(), 1);
    }

    /** On working days 7 kW from midnight to 4, on all days 3 kW from 13 to 15, on working days 2 kW from 21 to 22. */
    private static MeterMonth chargerLoad(int month) {
        double[] free = new double[24];
        Arrays.fill(free, 13, 15, 3);
        double[] work = free.clone();
        Arrays.fill(work, 0, 4, 7);
        work[21] = 2;
        Map<DayClass, Integer> days = new BillingCalendar(2025, HolidayRule.USUAL_IN_US).days(month);
        return new MeterMonth(month, days.entrySet().stream()
                .map(d -> new LoadDay(d.getKey().label(), d.getKey(), d.getValue(), d.getKey() == DayClass.WEEKDAY ? work : free))
                .toList());
    }

    /**
     * By hand: July 2025 has 22 working days, 4 Saturdays, 4 Sundays and Independence Day. On-peak 22 × 6 = 132 kWh, $33.19;
     * intermediate 22 × 2 + 9 × 6 = 98 kWh, $13.51; off-peak 22 × 28 = 616 kWh, $38.33; with $20 a total of $105.03.
     */
    @Test
    void timeOfUseInSummer() {
        Bill bill = Bill.printed(chargerOnly(), 1, chargerLoad(JULY), PeakHistory.NONE);
        assertEquals(List.of(20.0, 33.19, 13.51, 38.33), amounts(bill));
        assertEquals(105.03, bill.total(), 1e-9);
    }

    /**
     * By hand: October 2025 has 23 working days and 8 free days: on-peak 138 kWh at 13.786 cents, $19.02; intermediate 46 + 48
     * = 94 kWh, $12.96; off-peak 644 kWh, $40.08.
     */
    @Test
    void timeOfUseInWinter() {
        Bill bill = Bill.printed(chargerOnly(), 1, chargerLoad(OCTOBER), PeakHistory.NONE);
        assertEquals(List.of(20.0, 19.02, 12.96, 40.08), amounts(bill));
    }

    /** The periods of the tariff above, over a week: each hour has one price, by hand. */
    @Test
    void publishedHoursAreCoveredOnce() {
        assertEquals(List.of(), TariffCheck.hours(chargerOnly()));
    }

    /**
     * OpenEI, Utility Rate Database, rate 6557b6370a0b393f9801e6de as read: demand from 15:00 to 20:00 at $16.692/kW for the
     * first 100 kW and $11.285/kW above, at other hours $6.042 and $3.178, each with an adjustment of $0.271/kW. By hand for
     * 150 kW in the morning and 120 kW at 16:00: 100 × 6.313 + 50 × 3.449 = 803.75 and 100 × 16.963 + 20 × 11.556 = 1,927.42.
     */
    @Test
    void demandBlocks() {
        DemandCharge offPeak = demandBlocks("Off-peak demand", new double[] {0, 6.042 + 0.271, 100, 3.178 + 0.271}, 20, 15);
        DemandCharge onPeak = demandBlocks("On-peak demand", new double[] {0, 16.692 + 0.271, 100, 11.285 + 0.271}, 15, 20);
        double[] load = new double[24];
        load[8] = 150;
        load[16] = 120;
        Tariff tariff = new Tariff("Demand blocks", List.of(), MinimumBill.NONE, List.of(), List.of(offPeak, onPeak),
                Riders.NONE, List.of(), 1);
        Bill bill = Bill.of(tariff, 1, new MeterMonth(JULY, List.of(new LoadDay("day", DayClass.WEEKDAY, 22, load))),
                PeakHistory.NONE);
        assertEquals(803.75 + 1927.42, bill.total(), 1e-9);
    }

    private static DemandCharge demandBlocks(String name, double[] fromAndPrice, int fromHour, int toHour) {
        TariffPeriod period = new TariffPeriod(YEAR, WEEKDAYS, List.of(new Hours(60 * fromHour, 60 * toHour)));
        return new DemandCharge(name, List.of(new ChargeRate(period, ContractYears.ALL, prices(fromAndPrice))), 0,
                Optional.empty());
    }

    private static List<Double> billedKw(BillYear year) {
        return year.bills().stream().map(b -> b.lines().get(0).quantity()).toList();
    }

    private static Tariff ratcheted(Ratchet ratchet) {
        return new Tariff("Ratchet", List.of(), MinimumBill.NONE, List.of(), List.of(new DemandCharge("Demand",
                List.of(ChargeRate.of(TariffPeriod.ALWAYS, 10)), 0, Optional.of(ratchet))), Riders.NONE, List.of(), 1);
    }

    private static List<MeterMonth> months(double... peaksKw) {
        return IntStream.range(0, 12).mapToObj(m -> steady(m, peaksKw[m], 10_000)).toList();
    }

    /**
     * Pacific Northwest National Laboratory, "What is a demand ratchet?" (feds.pnnl.gov/faq/what-demand-ratchet): with 80 % of
     * the peak of the previous 11 months, a peak of 1,000 kW is billed as a minimum of 800 kW during the next 11 months.
     */
    @Test
    void ratchetOfElevenMonths() {
        List<MeterMonth> months = months(1000, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100);
        BillYear year = BillYear.after(ratcheted(Ratchet.anyTime(0.8, 11)), 1, months, PeakHistory.NONE);
        assertEquals(1000, billedKw(year).get(0), 0);
        assertEquals(Collections.nCopies(11, 800.0), billedKw(year).subList(1, 12));
        Bill after = Bill.of(ratcheted(Ratchet.anyTime(0.8, 11)), 1, steady(JANUARY, 100, 10_000), new PeakHistory(months));
        assertEquals(100, after.lines().get(0).quantity(), 0);
    }

    /**
     * Hydro-Québec, rates G and M (hydroquebec.com, "Helping you understand your electricity rate"): the minimum billing
     * demand is 65 % of the maximum demand of a consumption period wholly within winter among the 12 ending with the billed
     * one; winter December to March, from memory. A demand of summer does not count.
     */
    @Test
    void ratchetOfWinterDemands() {
        TariffPeriod winter = new TariffPeriod(Set.of(11, 0, 1, 2), EnumSet.allOf(DayClass.class), List.of(Hours.ALL_DAY));
        BillYear year = BillYear.steady(ratcheted(new Ratchet(0.65, 11, List.of(winter))), 1,
                months(400, 500, 400, 200, 200, 200, 600, 330, 200, 200, 200, 400));
        assertEquals(List.of(400.0, 500.0, 400.0, 325.0, 325.0, 325.0, 600.0, 330.0, 325.0, 325.0, 325.0, 400.0),
                billedKw(year));
    }

    /**
     * Public calendar of 2026 in the United States: Memorial Day 25 May, Labor Day 7 September, Thanksgiving Day 26 November.
     * Tucson Electric Power (tep.com, stand-alone EV plan): an Independence Day on Saturday is kept on Friday, 3 July.
     */
    @Test
    void holidaysByRule() {
        BillingCalendar usual = new BillingCalendar(2026, HolidayRule.USUAL_IN_US);
        assertEquals(DayClass.HOLIDAY, usual.dayClass(LocalDate.of(2026, 5, 25)));
        assertEquals(DayClass.HOLIDAY, usual.dayClass(LocalDate.of(2026, 9, 7)));
        assertEquals(DayClass.HOLIDAY, usual.dayClass(LocalDate.of(2026, 11, 26)));
        BillingCalendar tucson = new BillingCalendar(2026, List.of(new HolidayRule.OnDate("Independence Day",
                MonthDay.of(Month.JULY, 4), Observance.NEAREST_WEEKDAY)));
        assertEquals(DayClass.HOLIDAY, tucson.dayClass(LocalDate.of(2026, 7, 3)));
        assertEquals(DayOfWeek.SATURDAY, LocalDate.of(2026, 7, 4).getDayOfWeek());
        assertEquals(DayClass.SATURDAY, tucson.dayClass(LocalDate.of(2026, 7, 4)));
    }
}
