package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BillComponent;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.LoadDay;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.PeakHistory;
import org.amberyard.core.tariff.PriceBlock;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.depot.TariffDays;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.Test;

/** Bills of the example's tariffs, as they come out of the model, agree with bills by hand. */
class TariffCompilerTest {
    private static final int JULY = 6;
    private static final double[] WEEKDAY = load(50);
    private static final MeterMonth JULY_LOAD = new MeterMonth(JULY, List.of(
            new LoadDay("school day", DayClass.WEEKDAY, 22, WEEKDAY), new LoadDay("free day", DayClass.SATURDAY, 9, load(20))));

    static {
        WEEKDAY[17 * 4 + 1] = 200;
    }

    private final ScheduledTariff tariff = DepotFactory.eINSTANCE.createScheduledTariff();

    private static double[] load(double kw) {
        double[] day = new double[96];
        Arrays.fill(day, kw);
        return day;
    }

    private static Tariff generalService() throws Exception {
        Study study = ExampleStudy.load();
        return TariffCompiler.compile(study.getDepot().getAlternativeTariffs().get(0));
    }

    /** The sum by hand stands beside the same bill in the core's tests; with 400 kW of March the ratchet adds 40 kW. */
    @Test
    void generalServiceIsBilledAsByHand() throws Exception {
        Tariff generalService = generalService();
        assertEquals(7524.399, Bill.of(generalService, 1, JULY_LOAD, PeakHistory.ofPeaks(2, 400, 60, 60, 60)).total(), 1e-9);
        assertEquals(7524.399 - 40 * 7.8, Bill.of(generalService, 1, JULY_LOAD, PeakHistory.NONE).total(), 1e-9);
    }

    @Test
    void seasonsMayRunOverTheEndOfTheYear() throws Exception {
        MeterMonth january = new MeterMonth(0, JULY_LOAD.days());
        assertEquals(200 * (7.8 + 8.2), Bill.of(generalService(), 1, january, PeakHistory.NONE).amount(BillComponent.DEMAND), 1e-9);
    }

    @Test
    void demandIsPhasedInByYearOfService() throws Exception {
        Tariff fleetCharging = TariffCompiler.compile(ExampleStudy.load().getDepot().getTariff());
        for (double[] yearAndPrice : new double[][] {{1, 0}, {3, 0}, {4, 2.6}, {5, 5.2}, {14, 5.2}}) {
            Bill bill = Bill.of(fleetCharging, (int) yearAndPrice[0], JULY_LOAD, PeakHistory.NONE);
            assertEquals(200 * yearAndPrice[1], bill.amount(BillComponent.DEMAND), 1e-9);
        }
    }

    @Test
    void aFlatTariffIsCompiledToo() {
        FlatTariff flat = DepotFactory.eINSTANCE.createFlatTariff();
        flat.setMonthlyCharge(112);
        flat.setEnergyPricePerKwh(0.091);
        flat.setRiderPerKwh(0.0062);
        flat.setDemandPricePerKw(5.2);
        assertEquals(112 + 31_545 * (0.091 + 0.0062) + 200 * 5.2,
                Bill.of(TariffCompiler.compile(flat), 1, JULY_LOAD, PeakHistory.NONE).total(), 1e-9);
    }

    @Test
    void rowsOfTheSameHoursAreBlocks() {
        add("Energy", TariffChargeKind.ENERGY).setPricePerKwh(0.2);
        TariffCharge upper = add("Energy", TariffChargeKind.ENERGY);
        upper.setPricePerKwh(0.1);
        upper.setFromKwh(1000);
        EnergyCharge energy = compiled().energy().get(0);
        assertEquals(1, energy.rates().size());
        assertEquals(List.of(new PriceBlock(0, 0.2), new PriceBlock(1000, 0.1)), energy.rates().get(0).prices().blocks());
    }

    @Test
    void holidaysAreThoseOfTheRow() {
        TariffCharge row = add("Energy", TariffChargeKind.ENERGY);
        row.setDays(TariffDays.SUNDAYS_AND_HOLIDAYS);
        row.setFirstMonth(Month.NOVEMBER);
        row.setLastMonth(Month.FEBRUARY);
        var period = compiled().energy().get(0).rates().get(0).period();
        assertEquals(Set.of(10, 11, 0, 1), period.months());
        assertEquals(Set.of(DayClass.SUNDAY, DayClass.HOLIDAY), period.days());
        assertTrue(period.covers(0, DayClass.HOLIDAY, 1439));
    }

    @Test
    void minimumTaxRidersAndLossesArrive() {
        tariff.setCustomerCharge(30);
        tariff.setMinimumBill(10_000);
        tariff.setTaxShare(0.06);
        tariff.setLossFactor(1.02);
        add("Energy", TariffChargeKind.ENERGY).setPricePerKwh(0.1);
        add("Franchise", TariffChargeKind.RIDER_SHARE).setShare(0.05);
        Tariff compiled = compiled();
        assertEquals(MinimumBill.ofCharges(10_000), compiled.minimum());
        assertEquals(10_600, Bill.of(compiled, 1, JULY_LOAD, PeakHistory.NONE).total(), 1e-9);
        tariff.setMinimumBill(0);
        assertEquals((30 + 31_545 * 1.02 * 0.1 * 1.05) * 1.06, Bill.of(compiled(), 1, JULY_LOAD, PeakHistory.NONE).total(), 1e-9);
        assertEquals(Optional.empty(), compiled().demand().stream().findFirst());
    }

    private Tariff compiled() {
        return TariffCompiler.compile(tariff);
    }

    private TariffCharge add(String name, TariffChargeKind kind) {
        tariff.setName("Sheet");
        TariffCharge row = DepotFactory.eINSTANCE.createTariffCharge();
        row.setCharge(name);
        row.setKind(kind);
        tariff.getCharges().add(row);
        return row;
    }
}
