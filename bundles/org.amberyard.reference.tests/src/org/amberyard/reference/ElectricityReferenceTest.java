package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.amberyard.core.battery.TaperCurve;
import org.amberyard.core.charging.BusAcceptance;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.charging.StepGrid;
import org.amberyard.core.charging.SwapHours;
import org.amberyard.core.charging.YardCharging;
import org.amberyard.core.charging.YardStretch;
import org.amberyard.core.depot.ChargeTime;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.LoadDay;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.PeakHistory;
import org.amberyard.core.tariff.Tariff;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charging stations, services and bills. */
class ElectricityReferenceTest {

    /** SAE J1772 levels 1 and 2: 120 V with 12 and 16 A, 240 V with 30, 32, 40, 48 and 80 A; from memory. */
    @ParameterizedTest
    @CsvSource({"120,12,1.44", "120,16,1.92", "240,30,7.2", "240,32,7.68", "240,40,9.6", "240,48,11.52", "240,80,19.2"})
    void stationPower(double volts, double amperes, double kw) {
        assertEquals(kw, ChargeTime.singlePhaseKw(volts, amperes), 1e-12);
    }

    /** SAE J3068, three-phase 160 A: 133.02 kW at 480 V and 166.28 kW at 600 V; current from memory, power computed. */
    @ParameterizedTest
    @CsvSource({"480,160,133.02", "600,160,166.28"})
    void threePhasePower(double volts, double amperes, double kw) {
        assertEquals(kw, ChargeTime.threePhaseKw(volts, amperes), 0.005);
    }

    /** 150 kWh from a 240 V, 80 A station that loses 12 %: 150 / (19.2 × 0.88) = 8.88 h, worked by hand. */
    @Test
    void emptyToFull() {
        assertEquals(8.8778, ChargeTime.hours(150, ChargeTime.singlePhaseKw(240, 80), 0.88), 1e-4);
    }

    /**
     * A pack of 125 kWh usable at a 240 V, 80 A station that loses 7 %, full after about 7 h (common practice, no source): 7.0 h
     * at constant power, because the taper begins only where the pack takes less than 17.9 kW, and a few minutes for the rest.
     */
    @Test
    void emptyToFullWithTheTaper() {
        Port port = new Port("240 V", false, ChargeTime.singlePhaseKw(240, 80), 0.93, 0, 0, 0, 10, 10, 0);
        BusAcceptance bus = new BusAcceptance(19.2, 0, new TaperCurve(125, 6.25, 0.9, 125));
        PlugIn night = new PlugIn(1, "bus", 960, 960 + 840, 125, 1, bus);
        YardStretch stretch = new YardStretch(1, StepGrid.ofDays(1, 15), List.of(night), SwapHours.never(1440));
        YardCharging charging = YardCharging.of(stretch, PortUnit.of(port, 1, 1), ChargeRule.of(ChargePolicy.AT_ONCE));
        double[] kw = charging.schedule().meterKw()[0];
        long steps = Arrays.stream(kw).filter(k -> k > 0).count();
        assertTrue(charging.served());
        assertEquals(19.2, Arrays.stream(kw).max().orElseThrow(), 1e-9);
        assertEquals(125 / 0.93, charging.schedule().meterKwh(0), 1e-9);
        assertEquals(7, steps / 4.0, 0.25);
    }

    /**
     * NFPA 70 (National Electrical Code), 210.20(A) and 625.42, from memory: continuous loads at 125 %, so an 80 A station
     * wants a 100 A circuit and an 800 A, 480 V breaker carries 532 kVA.
     */
    @Test
    void continuousLoad() {
        assertEquals(100, 80 * ServiceInput.CONTINUOUS_FACTOR, 1e-12);
        assertEquals(532, new ServiceInput(480, 800, 300, 0.95, 0).breakerContinuousKva(), 0.2);
    }

    /**
     * NFPA 70, 220.87, determining existing loads: the measured highest demand of a year at 125 %, as in ResStock (National
     * Renewable Energy Laboratory), Electrical_Panels_EUSS/electrical_panel_size_nec_220_87.py: "takes maximum demand … times
     * demand factor 1.25". Figures by hand: a demand of 80 kW at power factor 1 takes 100 kVA of the service; with twenty
     * stations of 19.2 kW it asks for 580 kVA, which an 800 A, 480 V breaker (665 kVA) has and one of 600 A (499 kVA) has not.
     */
    @Test
    void measuredDemandOfTheBuilding() {
        ServiceInput service = new ServiceInput(480, 800, 1000, 1, 80);
        assertEquals(100, service.sizingKva(0), 1e-12);
        assertEquals(580, service.sizingKva(20 * 19.2), 1e-9);
        assertTrue(service.loadKva(20 * 19.2) < service.breakerContinuousKva());
        assertTrue(service.loadKva(20 * 19.2) > service.upgraded(1000, 600).breakerContinuousKva());
    }

    /**
     * United Electric Cooperative, general service three-phase below 500 kW, published rates of $54.50, $5.39/kW and
     * 4.137 c/kWh: 180 kW and 42,000 kWh bill at $2,762.24 a month (bill computed from the published rates).
     */
    @Test
    void monthlyBillOfPublishedRates() {
        Tariff tariff = Tariff.flat("General service", 54.50, 0.04137, 0, 5.39, 0);
        double otherKw = (42_000 - 180) / (30.0 * 24 - 1);
        double[] peakDay = new double[24];
        double[] otherDay = new double[24];
        Arrays.fill(peakDay, otherKw);
        Arrays.fill(otherDay, otherKw);
        peakDay[17] = 180;
        MeterMonth metered = new MeterMonth(0, List.of(new LoadDay("peak day", DayClass.WEEKDAY, 1, peakDay),
                new LoadDay("other day", DayClass.WEEKDAY, 29, otherDay)));
        assertEquals(2762.24, Bill.printed(tariff, 1, metered, PeakHistory.NONE).total(), 0.01);
    }
}
